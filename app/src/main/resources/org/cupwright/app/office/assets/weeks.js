// The weeks' table by keyboard and by dragging. Without this file every cell is a button, and exchanging a field of its form.
"use strict";
(() => {
  const table = document.querySelector("table.grid");
  if (!table) return;
  const cells = [...table.querySelectorAll("tbody tr[data-hole]")].map(row => [...row.querySelectorAll("button")]);
  const said = document.getElementById("said");
  const swap = document.getElementById("swap");
  const chosen = document.getElementById("chosen");
  let marked = null;

  table.setAttribute("role", "grid");
  document.querySelector(".keys").hidden = false;
  const all = cells.flat();
  const place = cell => {
    const row = cells.findIndex(of => of.includes(cell));
    return [row, cells[row].indexOf(cell)];
  };
  const reach = (cell, focus) => {
    all.forEach(one => { one.tabIndex = one === cell ? 0 : -1; });
    if (focus) cell.focus();
  };
  const named = location.hash.length > 1 && document.getElementById(decodeURIComponent(location.hash.slice(1)));
  reach(all.includes(named) ? named : all[0], all.includes(named));

  const mark = cell => {
    if (marked) marked.parentElement.classList.remove("marked");
    marked = cell;
    if (cell) cell.parentElement.classList.add("marked");
  };
  const exchange = (one, other) => {
    const [on, hole] = split(one.value);
    swap.elements.on.value = on;
    swap.elements.more.value = split(other.value)[0];
    swap.elements.hole.value = hole;
    swap.requestSubmit();
  };
  const split = value => [value.slice(0, 10), value.slice(11)];
  const pair = (one, other) => one !== other && one.dataset.draft && other.dataset.draft
    && one.closest("tr") === other.closest("tr");

  table.addEventListener("keydown", event => {
    const cell = event.target.closest("button");
    if (!cell || event.ctrlKey || event.altKey || event.metaKey) return;
    const [row, column] = place(cell);
    const last = cells[row].length - 1;
    const to = {
      ArrowRight: [row, column + 1], ArrowLeft: [row, column - 1], ArrowDown: [row + 1, column],
      ArrowUp: [row - 1, column], Home: [row, 0], End: [row, last]
    }[event.key];
    if (to) {
      event.preventDefault();
      const next = cells[to[0]] && cells[to[0]][to[1]];
      if (next) reach(next, true);
    } else if (event.key === " ") {
      event.preventDefault();
      if (!cell.dataset.draft) return;
      if (marked && pair(marked, cell)) {
        exchange(marked, cell);
      } else {
        const other = marked && marked !== cell;
        mark(cell);
        said.textContent = other ? table.dataset.other : table.dataset.marked;
      }
    } else if (event.key === "Escape" && marked) {
      mark(null);
      said.textContent = "";
    }
  });
  table.addEventListener("keyup", event => { if (event.key === " ") event.preventDefault(); });
  table.addEventListener("focusin", event => {
    const cell = event.target.closest("button");
    if (cell) reach(cell, false);
  });

  // Dragging, for those who have a mouse or a pen: a finger scrolls.
  let from = null;
  let dragged = false;
  const under = event => {
    const at = document.elementFromPoint(event.clientX, event.clientY);
    return at && at.closest("table.grid tbody td") && at.closest("td").querySelector("button");
  };
  table.addEventListener("pointerdown", event => {
    const cell = event.target.closest("tbody button");
    if (event.pointerType === "touch" || event.button !== 0 || !cell || !cell.dataset.draft) return;
    from = cell;
    dragged = false;
  });
  document.addEventListener("pointermove", event => {
    if (!from) return;
    const over = under(event);
    dragged = dragged || over !== from;
    all.forEach(one => one.parentElement.classList.toggle("over", dragged && one === over && pair(from, one)));
    from.parentElement.classList.toggle("marked", dragged);
  });
  document.addEventListener("pointerup", event => {
    if (!from) return;
    const over = under(event);
    all.forEach(one => one.parentElement.classList.remove("over"));
    from.parentElement.classList.remove("marked");
    if (dragged && over && pair(from, over)) exchange(from, over);
    from = null;
  });
  document.addEventListener("pointercancel", () => {
    if (from) from.parentElement.classList.remove("marked");
    from = null;
  });
  table.addEventListener("click", event => {
    if (dragged) event.preventDefault();
    dragged = false;
  });

  // What is shown of a cell: the reading goes on there, and comes back to the cell.
  const back = () => {
    const open = chosen.querySelector(".chosen");
    const cell = open && document.getElementById(open.dataset.cell);
    chosen.replaceChildren();
    if (cell) reach(cell, true);
  };
  document.addEventListener("htmx:afterSwap", event => {
    if (event.target === chosen) chosen.querySelector("h2")?.focus();
  });
  chosen.addEventListener("keydown", event => { if (event.key === "Escape") back(); });
  chosen.addEventListener("click", event => {
    if (event.target.closest(".shut")) {
      event.preventDefault();
      back();
    }
  });
})();
