// Keys for the doubts, for those who have many: y, 1 to 9, l.
"use strict";
(() => {
  const press = (button) => {
    if (button) {
      button.click();
    }
  };
  document.addEventListener("keydown", (event) => {
    const typing = event.target instanceof HTMLInputElement;
    if (typing || event.ctrlKey || event.altKey || event.metaKey) {
      return;
    }
    const answers = [...document.querySelectorAll("#answers button[name=answer]")].filter(
      (button) => button.id !== "accept");
    if (event.key === "y") {
      press(document.getElementById("accept"));
    } else if (event.key === "l") {
      press(document.getElementById("later"));
    } else if (/^[1-9]$/.test(event.key)) {
      press(answers[Number(event.key) - 1]);
    }
  });
})();
