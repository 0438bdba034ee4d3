// The first evening works without this file: it only fills in fields by clicks on a map or a picture.
"use strict";

document.addEventListener("DOMContentLoaded", () => {
  document.querySelectorAll("[data-script]").forEach((one) => { one.hidden = false; });
  const numbers = document.getElementById("numbers");
  if (numbers) {
    numberByClicks(numbers);
  }
  const picture = document.getElementById("picture");
  if (picture) {
    traceOnPicture(picture);
  }
});

/** Clicking greens numbers them one after the other; dragging across one gives it its direction. */
function numberByClicks(form) {
  const SLIP = 9; // drawing units that a finger may slip in a click: our choice
  const SVG = "http://www.w3.org/2000/svg";
  const svg = form.querySelector(".clicks svg");
  const next = document.getElementById("next");
  let from = null;

  function place(event) {
    return new DOMPoint(event.clientX, event.clientY).matrixTransform(svg.getScreenCTM().inverse());
  }

  function field(beginning, green) {
    return document.getElementById(beginning + "-" + green);
  }

  function label(green) {
    return svg.querySelector(`[data-green="${green}"] .label text`);
  }

  function shift(name) {
    const parts = name.match(/^(.*?)(\d+)$/);
    return parts ? parts[1] + (Number(parts[2]) + 1) : name;
  }

  function number(green) {
    field("hole", green).value = next.value;
    field("out", green).checked = false;
    label(green).textContent = next.value;
    next.value = shift(next.value);
  }

  function point(green, start, end) {
    const degrees = Math.round((Math.atan2(end.x - start.x, start.y - end.y) * 180) / Math.PI + 360) % 360;
    field("play", green).value = degrees;
    const group = svg.querySelector(`[data-green="${green}"]`);
    let arrow = group.querySelector(".dragged");
    group.querySelectorAll(".play:not(.dragged)").forEach((old) => old.remove());
    if (!arrow) {
      arrow = document.createElementNS(SVG, "path");
      arrow.setAttribute("class", "play dragged");
      group.append(arrow);
    }
    const middle = group.querySelector("circle");
    const x = Number(middle.getAttribute("cx"));
    const y = Number(middle.getAttribute("cy"));
    const way = (turn, length) => {
      const at = ((degrees + turn) * Math.PI) / 180;
      return `${(Math.sin(at) * length).toFixed(1)} ${(-Math.cos(at) * length).toFixed(1)}`;
    };
    arrow.setAttribute("d", `M${x} ${y}l${way(180, 44)}M${x} ${y}l${way(150, 14)}M${x} ${y}l${way(210, 14)}`);
  }

  svg.addEventListener("pointerdown", (event) => {
    const green = event.target.closest("[data-green]");
    if (green && event.button === 0) {
      from = { green: green.dataset.green, at: place(event) };
      svg.setPointerCapture(event.pointerId);
      event.preventDefault();
    }
  });
  svg.addEventListener("pointerup", (event) => {
    if (!from) {
      return;
    }
    const to = place(event);
    if (Math.hypot(to.x - from.at.x, to.y - from.at.y) > SLIP) {
      point(from.green, from.at, to);
    } else {
      number(from.green);
    }
    from = null;
  });
  svg.addEventListener("pointercancel", () => { from = null; });
}

/** The club's own picture, drawn from its file within the browser; clicks become pixels in the fields. */
function traceOnPicture(canvas) {
  const CLICK = 5; // screen pixels that a finger may slip in a click: our choice
  const STEP = 8; // screen pixels that an arrow key moves the cross: our choice
  const NEARER = 1.4; // times as near by one key: our choice
  const chooser = document.getElementById("aerial");
  const wrong = document.getElementById("aerial-wrong");
  const meant = document.getElementById("meant");
  const corners = document.getElementById("corners");
  const value = (id) => document.getElementById(id).value;
  let image = null;
  let view = { x: 0, y: 0, scale: 1 }; // the picture's pixel in the middle, and screen pixels a pixel
  let mean = value("secondRight") ? "corners" : "first";
  let cross = null;
  let finger = null;

  chooser.disabled = false;

  function tell(word) {
    wrong.hidden = !word;
    wrong.textContent = word || "";
  }

  chooser.addEventListener("change", async () => {
    try {
      image = await createImageBitmap(chooser.files[0]);
    } catch (unreadable) {
      tell(wrong.dataset.unreadable);
      return;
    }
    const kept = value("secondRight") !== "" && value("width") !== "";
    const other = kept && (Number(value("width")) !== image.width || Number(value("height")) !== image.height);
    tell(other ? wrong.dataset.other : "");
    if (!kept || other) {
      document.getElementById("width").value = image.width;
      document.getElementById("height").value = image.height;
      mean = "first";
    }
    canvas.hidden = false;
    document.getElementById("picture-keys").hidden = false;
    view = { x: image.width / 2, y: image.height / 2, scale: 0 };
    say();
    draw();
  });

  function say() {
    meant.hidden = !image;
    meant.textContent = meant.dataset[mean];
    document.querySelectorAll("[data-mean]").forEach((one) =>
      one.setAttribute("aria-pressed", one.dataset.mean === mean));
  }

  function least() {
    return Math.min(canvas.clientWidth / image.width, canvas.clientHeight / image.height);
  }

  function screen(at) {
    return {
      x: (at.x - view.x) * view.scale + canvas.clientWidth / 2,
      y: (at.y - view.y) * view.scale + canvas.clientHeight / 2,
    };
  }

  function pixel(x, y) {
    return {
      x: (x - canvas.clientWidth / 2) / view.scale + view.x,
      y: (y - canvas.clientHeight / 2) / view.scale + view.y,
    };
  }

  function typedCorners() {
    return corners.value.split("\n").map((line) => line.trim().split(/[\s;]+/).map(Number))
      .filter((pair) => pair.length === 2 && pair.every(Number.isFinite))
      .map((pair) => ({ x: pair[0], y: pair[1] }));
  }

  function line(pen, points, close) {
    pen.beginPath();
    points.map(screen).forEach((at, i) => (i ? pen.lineTo(at.x, at.y) : pen.moveTo(at.x, at.y)));
    if (close) {
      pen.closePath();
    }
    for (const [width, colour] of [[5, "#25221d"], [2.5, "#fdfaf3"]]) { // seen on dark and on light ground
      pen.lineWidth = width;
      pen.strokeStyle = colour;
      pen.stroke();
    }
  }

  function mark(pen, at, word) {
    const on = screen(at);
    line(pen, [pixel(on.x - 9, on.y), pixel(on.x + 9, on.y)], false);
    line(pen, [pixel(on.x, on.y - 9), pixel(on.x, on.y + 9)], false);
    if (word) {
      pen.font = "600 16px 'Open Sans', sans-serif";
      pen.lineWidth = 4;
      pen.strokeStyle = "#25221d";
      pen.strokeText(word, on.x + 10, on.y - 8);
      pen.fillStyle = "#fdfaf3";
      pen.fillText(word, on.x + 10, on.y - 8);
    }
  }

  function draw() {
    if (!image) {
      return;
    }
    const ratio = window.devicePixelRatio || 1;
    canvas.width = canvas.clientWidth * ratio;
    canvas.height = canvas.clientHeight * ratio;
    view.scale = Math.max(view.scale, least());
    view.x = Math.min(Math.max(view.x, 0), image.width);
    view.y = Math.min(Math.max(view.y, 0), image.height);
    const pen = canvas.getContext("2d");
    pen.setTransform(ratio, 0, 0, ratio, 0, 0);
    pen.clearRect(0, 0, canvas.clientWidth, canvas.clientHeight);
    const corner = screen({ x: 0, y: 0 });
    pen.drawImage(image, corner.x, corner.y, image.width * view.scale, image.height * view.scale);
    (canvas.dataset.rings || "").split(";").filter(Boolean).forEach((ring) =>
      line(pen, ring.split(" ").map((pair) => ({ x: Number(pair.split(",")[0]), y: Number(pair.split(",")[1]) })), true));
    ["first", "second"].forEach((point, i) => {
      if (value(point + "Right") !== "") {
        mark(pen, { x: Number(value(point + "Right")), y: Number(value(point + "Down")) }, String(i + 1));
      }
    });
    const typed = typedCorners();
    line(pen, typed, typed.length > 2);
    typed.forEach((at) => mark(pen, at, ""));
    if (cross) {
      mark(pen, cross, "");
    }
  }

  function clicked(at) {
    const x = Math.min(Math.max(at.x, 0), image.width).toFixed(1);
    const y = Math.min(Math.max(at.y, 0), image.height).toFixed(1);
    if (mean === "corners") {
      const before = corners.value.trim();
      corners.value = (before ? before + "\n" : "") + x + " " + y;
    } else {
      document.getElementById(mean + "Right").value = x;
      document.getElementById(mean + "Down").value = y;
    }
    draw();
  }

  function near(times, at) {
    const before = screen(at);
    view.scale = Math.min(Math.max(view.scale * times, least()), 40);
    const after = screen(at);
    view.x += (after.x - before.x) / view.scale;
    view.y += (after.y - before.y) / view.scale;
    draw();
  }

  function under(event) {
    const box = canvas.getBoundingClientRect();
    return pixel(event.clientX - box.left, event.clientY - box.top);
  }

  canvas.addEventListener("wheel", (event) => {
    event.preventDefault();
    near(Math.exp(-event.deltaY / 400), under(event));
  }, { passive: false });
  canvas.addEventListener("pointerdown", (event) => {
    finger = { x: event.clientX, y: event.clientY, slipped: 0 };
    canvas.setPointerCapture(event.pointerId);
  });
  canvas.addEventListener("pointermove", (event) => {
    if (!finger) {
      return;
    }
    const right = event.clientX - finger.x;
    const down = event.clientY - finger.y;
    finger = { x: event.clientX, y: event.clientY, slipped: finger.slipped + Math.hypot(right, down) };
    if (finger.slipped > CLICK) {
      view.x -= right / view.scale;
      view.y -= down / view.scale;
      draw();
    }
  });
  canvas.addEventListener("pointerup", (event) => {
    const still = finger && finger.slipped <= CLICK;
    finger = null;
    if (still) {
      cross = null;
      clicked(under(event));
    }
  });
  canvas.addEventListener("pointercancel", () => { finger = null; });

  const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, -1], ArrowDown: [0, 1] };
  canvas.addEventListener("keydown", (event) => {
    const way = ways[event.key];
    cross = cross || { x: view.x, y: view.y };
    if (way) {
      cross = { x: cross.x + (way[0] * STEP) / view.scale, y: cross.y + (way[1] * STEP) / view.scale };
      draw();
    } else if (event.key === "Enter") {
      clicked(cross);
    } else if (event.key === "+" || event.key === "=") {
      near(NEARER, cross);
    } else if (event.key === "-") {
      near(1 / NEARER, cross);
    } else {
      return;
    }
    event.preventDefault();
  });

  document.addEventListener("click", (event) => {
    const button = event.target.closest("[data-mean], [data-undo]");
    if (button && button.dataset.mean) {
      mean = button.dataset.mean;
      say();
      canvas.focus();
    } else if (button) {
      corners.value = corners.value.trim().split("\n").slice(0, -1).join("\n");
      draw();
    }
  });
  corners.addEventListener("input", draw);
  window.addEventListener("resize", draw);
  say();
}
