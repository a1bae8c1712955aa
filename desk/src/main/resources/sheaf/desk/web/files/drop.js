// Sends each file by itself as soon as it is chosen, and shows its answer; without this script the
// form sends all of them at once.
"use strict";
(() => {
  const form = document.getElementById("drop");
  const results = document.getElementById("results");
  const progress = document.getElementById("progress");
  const token = document.body.dataset.token;
  const atOnce = 2;
  const largest = 60e6;
  const queue = [];
  let running = 0;
  let done = 0;
  let all = 0;

  const say = () => {
    progress.textContent = done < all ? `Reading: ${done} of ${all} done` : `${all} read`;
  };

  const line = (file) => {
    const item = document.createElement("li");
    item.className = "drop-result waiting";
    item.textContent = `${file.name}: waiting`;
    results.prepend(item);
    return item;
  };

  const put = (item, html) => {
    const parsed = new DOMParser().parseFromString(html, "text/html");
    const lines = [...parsed.body.querySelectorAll("li.drop-result")];
    item.replaceWith(...lines);
  };

  const failed = (item, file, words) => {
    item.className = "drop-result refused";
    item.textContent = `${file.name}: ${words}`;
  };

  const send = ({ file, item }) => {
    running += 1;
    const data = new FormData();
    data.append("token", token);
    data.append("file", file, file.name);
    const request = new XMLHttpRequest();
    request.open("POST", "/drop");
    request.setRequestHeader("X-Sheaf-Script", "1");
    request.setRequestHeader("X-Sheaf-Token", token);
    request.upload.addEventListener("progress", (event) => {
      const share = event.lengthComputable ? Math.round((100 * event.loaded) / event.total) : 0;
      item.textContent = share < 100 ? `${file.name}: ${share} % sent` : `${file.name}: reading`;
    });
    request.addEventListener("load", () => {
      if (request.status === 200) {
        put(item, request.responseText);
      } else {
        failed(item, file, request.responseText);
      }
    });
    request.addEventListener("error", () => failed(item, file, "the desk was not reached; try again."));
    request.addEventListener("loadend", () => {
      running -= 1;
      done += 1;
      say();
      next();
    });
    request.send(data);
  };

  const next = () => {
    while (running < atOnce && queue.length > 0) {
      send(queue.shift());
    }
  };

  const take = (files) => {
    for (const file of files) {
      const item = line(file);
      if (file.size > largest) {
        failed(item, file, "larger than 60 MB: send fewer pages at a time.");
      } else {
        all += 1;
        queue.push({ file, item });
      }
    }
    say();
    next();
  };

  for (const input of form.querySelectorAll("input[type=file]")) {
    input.addEventListener("change", () => {
      take(input.files);
      form.reset();
    });
  }
  document.getElementById("send").hidden = true;
  document.addEventListener("dragover", (event) => event.preventDefault());
  document.addEventListener("drop", (event) => {
    event.preventDefault();
    take(event.dataTransfer.files);
  });
})();
