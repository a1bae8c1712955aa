@echo off
rem Starts Sheaf from anywhere; builds it first when it was never built or its sources are newer.
setlocal EnableExtensions
set "ROOT=%~dp0"
set "JAR=%ROOT%desk\target\sheaf.jar"
set "STAMP=%ROOT%desk\target\built"
set "LOCK=%ROOT%target\building"

set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
"%JAVA%" -version >nul 2>nul
if errorlevel 1 (
  >&2 echo sheaf: Java 17 or later is needed, and there is no 'java' on the path.
  exit /b 1
)

call :is_built
if not errorlevel 1 goto start
if not exist "%ROOT%target" mkdir "%ROOT%target"

:wait
mkdir "%LOCK%" 2>nul
if errorlevel 1 (
  rem Another start is building. A build takes minutes at most: an older lock was left behind.
  powershell -NoProfile -Command "if ((Get-Item -LiteralPath $env:LOCK).CreationTime -lt (Get-Date).AddMinutes(-20)) { Remove-Item -Recurse -LiteralPath $env:LOCK } else { Start-Sleep 1 }"
  goto wait
)
call :is_built
if errorlevel 1 call :build
set "BUILT=%ERRORLEVEL%"
rmdir /s /q "%LOCK%"
if not "%BUILT%"=="0" exit /b 1

:start
"%JAVA%" -XX:TieredStopAtLevel=1 -XX:+UseSerialGC -Xshare:auto -Djava.awt.headless=true -Dsheaf.watched=true -jar "%JAR%" %*
exit /b %ERRORLEVEL%

:is_built
if not exist "%JAR%" exit /b 1
if not exist "%STAMP%" exit /b 1
powershell -NoProfile -Command "$built = (Get-Item -LiteralPath $env:STAMP).LastWriteTime; $newer = Get-ChildItem -Recurse -Path ($env:ROOT + 'pom.xml'), ($env:ROOT + '*\pom.xml'), ($env:ROOT + '*\src\main') | Where-Object { $_.LastWriteTime -gt $built } | Select-Object -First 1; if ($newer) { exit 1 } else { exit 0 }"
exit /b %ERRORLEVEL%

:build
powershell -NoProfile -Command "if ((& $env:JAVA -version 2>&1 | Out-String) -match 'version .(\d+)' -and [int]$Matches[1] -ge 17) { exit 0 } else { exit 1 }"
if errorlevel 1 (
  >&2 echo sheaf: Java 17 or later is needed; %JAVA% is older.
  exit /b 1
)
where mvn >nul 2>nul
if errorlevel 1 (
  >&2 echo sheaf: Maven is needed to build Sheaf once, and there is no 'mvn' on the path.
  exit /b 1
)
>&2 echo sheaf: building once; the first time this can take some minutes ...
echo built > "%LOCK%\stamp"
call mvn -q -B -ntp -f "%ROOT%pom.xml" -Dmaven.test.skip=true package > "%LOCK%\log" 2>&1
if errorlevel 1 (
  type "%LOCK%\log" >&2
  >&2 echo sheaf: the build failed; its messages are above.
  exit /b 1
)
move /y "%LOCK%\stamp" "%STAMP%" >nul
exit /b 0
