// Holes on the sheet's picture: drag, add, take away, name. What each state comes to is computed by
// the desk, with the same code as everything else; nothing is kept before it is asked for.
"use strict";
(() => {
  const space = "http://www.w3.org/2000/svg";
  const sheet = document.getElementById("sheet");
  const layer = document.getElementById("holes");
  const list = document.getElementById("list");
  const answer = document.getElementById("answer");
  const said = document.getElementById("said");
  const undo = document.getElementById("undo");
  const keep = document.getElementById("keep");
  const add = document.getElementById("add");
  const token = document.body.dataset.token;
  const heads = sheet.dataset.heads === "yes";
  const grip = 4;
  let holes = [...list.querySelectorAll("form")].map((form) => ({
    x: Number(form.dataset.x),
    y: Number(form.dataset.y),
    radius: Number(form.dataset.radius),
    head: form.dataset.head,
    aim: form.dataset.aim,
  }));
  let edits = [];
  let states = [];
  let asking = false;
  let askAgain = false;

  const element = (name, attributes) => {
    const made = document.createElementNS(space, name);
    for (const [key, value] of Object.entries(attributes)) {
      made.setAttribute(key, value);
    }
    return made;
  };

  const copy = (all) => all.map((hole) => ({ ...hole }));
  const spoken = (head) =>
    head === "field" ? "field point" : head === "unknown" ? "head unknown" : head;

  const place = (event) => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(
      sheet.getScreenCTM().inverse());
    const box = sheet.viewBox.baseVal;
    return {
      x: Math.min(Math.max(at.x, box.x), box.x + box.width),
      y: Math.min(Math.max(at.y, box.y), box.y + box.height),
    };
  };

  const sign = (hole) => {
    const reach = hole.radius + 1;
    return hole.head === "broadhead"
      ? element("rect", {
          class: "hole broadhead", x: -reach, y: -reach, width: 2 * reach, height: 2 * reach })
      : element("circle", { class: `hole ${hole.head}`, r: reach });
  };

  const ask = async () => {
    if (asking) {
      askAgain = true;
      return;
    }
    asking = true;
    try {
      const reply = await fetch(sheet.dataset.try, {
        method: "POST",
        headers: {
          "Content-Type": "application/json", "X-Sheaf-Script": "1", "X-Sheaf-Token": token },
        body: JSON.stringify(edits),
      });
      if (reply.ok) {
        show(await reply.json());
        said.textContent = edits.length > 0 ? "Not kept yet." : "";
      } else {
        said.textContent = await reply.text();
      }
    } catch {
      said.textContent = "The desk was not reached.";
    }
    asking = false;
    if (askAgain) {
      askAgain = false;
      ask();
    }
  };

  const show = (now) => {
    for (const old of answer.querySelectorAll(":scope > p")) {
      old.remove();
    }
    const pictures = document.getElementById("pictures");
    for (const line of now.answer) {
      const words = document.createElement("p");
      words.className = "big";
      words.textContent = line;
      answer.insertBefore(words, pictures);
    }
    const parsed = new DOMParser().parseFromString(now.picture, "text/html");
    pictures.replaceChildren(...parsed.body.children);
  };

  const changed = (edit, remember) => {
    if (remember) {
      states.push({ holes: remember, edits: [...edits] });
    }
    edits.push(edit);
    draw();
    ask();
  };

  const move = (hole, to) => ({
    near: [hole.x, hole.y], at: [to.x, to.y], head: hole.head, aim: hole.aim });

  const drag = (event, hole, group) => {
    event.preventDefault();
    const before = copy(holes);
    const start = { ...hole };
    const begun = [...edits];
    let moved = false;
    group.classList.add("held");
    group.setPointerCapture(event.pointerId);
    const follow = (now) => {
      const at = place(now);
      moved = true;
      hole.x = at.x;
      hole.y = at.y;
      group.setAttribute("transform", `translate(${at.x} ${at.y})`);
      edits = [...begun, move(start, at)];
      ask();
    };
    group.addEventListener("pointermove", follow);
    const end = () => {
      group.removeEventListener("pointermove", follow);
      group.classList.remove("held");
      if (moved) {
        states.push({ holes: before, edits: begun });
      }
      draw();
    };
    group.addEventListener("pointerup", end, { once: true });
    group.addEventListener("pointercancel", end, { once: true });
  };

  const nudge = (event, hole, index) => {
    const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
    if (event.key === "Delete") {
      remove(index);
    } else if (ways[event.key]) {
      event.preventDefault();
      const step = event.shiftKey ? 2 : 0.2;
      const before = copy(holes);
      const start = { ...hole };
      hole.x += step * ways[event.key][0];
      hole.y += step * ways[event.key][1];
      changed(move(start, hole), before);
      layer.children[index].focus();
    }
  };

  const remove = (index) => {
    const before = copy(holes);
    const [gone] = holes.splice(index, 1);
    changed({ near: [gone.x, gone.y] }, before);
  };

  const rename = (index, head) => {
    const before = copy(holes);
    const hole = holes[index];
    hole.head = head;
    changed(move(hole, hole), before);
  };

  const button = (words, act) => {
    const made = document.createElement("button");
    made.type = "button";
    made.textContent = words;
    made.addEventListener("click", act);
    return made;
  };

  const row = (hole, index) => {
    const item = document.createElement("li");
    const line = document.createElement("div");
    line.className = "line";
    const number = document.createElement("span");
    number.className = "no";
    number.textContent = index + 1;
    const words = document.createElement("span");
    words.textContent = spoken(hole.head);
    line.append(number, words);
    if (heads && hole.head !== "field") {
      line.append(button("Field point", () => rename(index, "field")));
    }
    if (heads && hole.head !== "broadhead") {
      line.append(button("Broadhead", () => rename(index, "broadhead")));
    }
    line.append(button("No hole", () => remove(index)));
    item.append(line);
    return item;
  };

  const draw = () => {
    layer.replaceChildren(...holes.map((hole, index) => {
      const group = element("g", {
        class: "handle", tabindex: "0", role: "button",
        transform: `translate(${hole.x} ${hole.y})`,
        "aria-label": `Hole ${index + 1}, ${spoken(hole.head)}; arrow keys move it, Delete takes it away`,
      });
      group.append(element("circle", { class: "grip", r: hole.radius + grip }), sign(hole));
      group.addEventListener("pointerdown", (event) => drag(event, hole, group));
      group.addEventListener("keydown", (event) => nudge(event, hole, index));
      return group;
    }));
    list.replaceChildren(...holes.map(row));
    undo.disabled = states.length === 0;
    keep.disabled = edits.length === 0;
  };

  add.addEventListener("click", () => {
    const adding = add.getAttribute("aria-pressed") !== "true";
    add.setAttribute("aria-pressed", String(adding));
    said.textContent = adding ? "Touch the sheet where the hole is." : "";
  });

  sheet.addEventListener("click", (event) => {
    if (add.getAttribute("aria-pressed") !== "true") {
      return;
    }
    add.setAttribute("aria-pressed", "false");
    const at = place(event);
    const known = holes[0];
    const hole = {
      ...at, radius: known ? known.radius : 3.2, head: heads ? "unknown" : "field",
      aim: known ? known.aim : "" };
    const before = copy(holes);
    holes.push(hole);
    changed(move(hole, hole), before);
  });

  undo.addEventListener("click", () => {
    const last = states.pop();
    holes = last.holes;
    edits = last.edits;
    draw();
    ask();
  });

  keep.addEventListener("click", async () => {
    keep.disabled = true;
    const reply = await fetch(sheet.dataset.keep, {
      method: "POST",
      headers: {
        "Content-Type": "application/json", "X-Sheaf-Script": "1", "X-Sheaf-Token": token },
      body: JSON.stringify(edits),
    });
    if (reply.ok) {
      location.assign(await reply.text());
    } else {
      said.textContent = await reply.text();
      keep.disabled = false;
    }
  });

  document.getElementById("tools").hidden = false;
  draw();
})();
