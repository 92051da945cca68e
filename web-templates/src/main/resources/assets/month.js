// A month to be typed in: Enter and the arrows go down and up, and a block of a spreadsheet spreads over the boxes.
// Without this script the page does all else.
(() => {
  "use strict";
  const form = document.querySelector("form[data-month]");
  const line = document.querySelector("[data-month-line]");
  if (!form) {
    return;
  }
  const say = self.tankroundsWords.of(document.currentScript);

  const rows = [...form.querySelectorAll("tr[data-day]")].map((row) => [...row.querySelectorAll("input")]);
  let touched = false;
  let leaving = false;

  const place = (box) => {
    const row = rows.findIndex((boxes) => boxes.includes(box));
    return { row, column: row < 0 ? -1 : rows[row].indexOf(box) };
  };

  /* ---- down and up ---- */

  const go = (from, by) => {
    const { row, column } = place(from);
    for (let next = row + by; next >= 0 && next < rows.length; next += by) {
      if (!rows[next][column].disabled) {
        rows[next][column].focus();
        rows[next][column].select();
        return;
      }
    }
    if (by > 0) {
      form.querySelector(".actions button").focus();
    }
  };

  form.addEventListener("keydown", (event) => {
    const down = event.key === "ArrowDown" || (event.key === "Enter" && !event.shiftKey);
    const up = event.key === "ArrowUp" || (event.key === "Enter" && event.shiftKey);
    if ((down || up) && !event.isComposing && place(event.target).row >= 0) {
      event.preventDefault();
      go(event.target, down ? 1 : -1);
    }
  });

  /* ---- a block ---- */

  const spread = (block, from) => {
    let filled = 0;
    let left = 0;
    block.forEach((cells, down) => {
      const boxes = rows[from.row + down];
      if (cells.some((text) => text.trim() !== "")) {
        const fits = boxes && !boxes[0].disabled && from.column + cells.length <= boxes.length;
        filled += fits ? 1 : 0;
        left += fits ? 0 : 1;
        if (fits) {
          cells.forEach((text, right) => { boxes[from.column + right].value = text.trim(); });
        }
      }
    });
    line.textContent = say("pasted", filled) + (left ? " " + say("left", left) : "");
    touched = touched || filled > 0;
  };

  form.addEventListener("paste", (event) => {
    const text = event.clipboardData ? event.clipboardData.getData("text/plain").replace(/\r\n?/g, "\n").replace(/\n$/, "") : "";
    const from = place(event.target);
    if (from.row >= 0 && /[\t\n]/.test(text)) {
      event.preventDefault();
      spread(text.split("\n").map((row) => row.split("\t")), from);
    }
  });

  /* ---- nothing typed is lost ---- */

  form.addEventListener("input", () => { touched = true; });

  self.addEventListener("beforeunload", (event) => {
    if (touched && !leaving) {
      event.preventDefault();
    }
  });

  // When it is sent at last.
  form.addEventListener("formdata", () => { leaving = true; });

  self.addEventListener("pageshow", () => { leaving = false; });
})();
