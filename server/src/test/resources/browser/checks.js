// What a page must keep besides the rules of the scanner; each check returns sentences, none where all is well.
(() => {
  const CONTROLS = "a[href], button, input:not([type=hidden]), select, textarea, summary, [tabindex='0']";
  const LEAST_TARGET = 24;
  const LONGEST_FRAMES_MS = 1000;

  const shown = (element) => element.checkVisibility({ visibilityProperty: true }) && element.getClientRects().length > 0;
  const name = (element) => `<${element.tagName.toLowerCase()}${element.id ? " id=" + element.id : ""}> "`
    + (element.innerText || element.getAttribute("aria-label") || element.name || "").trim().slice(0, 40) + '"';

  // What the Tab key should reach: of radio buttons with one name, one.
  const stops = () => [...document.querySelectorAll(CONTROLS)].filter((element) =>
    element.tabIndex >= 0 && !element.disabled && shown(element));
  const groupOf = (element) => (element.type === "radio" ? "radio " + element.name : element);

  // A link in running text may be as high as its line.
  const inText = (element) => element.tagName === "A" && getComputedStyle(element).display === "inline"
    && element.parentElement.innerText.trim() !== element.innerText.trim();

  const box = (element) => {
    const labels = [...(element.labels || [])].map((label) => label.getBoundingClientRect());
    const least = (rect) => Math.min(rect.width, rect.height);
    return [element.getBoundingClientRect(), ...labels].reduce((a, b) => (least(a) >= least(b) ? a : b));
  };

  let waiting = new Set();

  window.checks = {
    async overflow() {
      // Charts take the page's new width with the next frame; a window behind another is drawn no frames.
      await new Promise((done) => {
        requestAnimationFrame(() => requestAnimationFrame(done));
        setTimeout(done, LONGEST_FRAMES_MS);
      });
      const width = document.documentElement.clientWidth;
      if (document.documentElement.scrollWidth <= width) {
        return [];
      }
      const wide = [...document.body.querySelectorAll("*")].filter((element) =>
        !element.closest(".table-box") && shown(element) && element.getBoundingClientRect().right > width + 1);
      return [`scrolls sideways at ${width} px because of ${name(wide.pop() || document.body)}`];
    },

    smallTargets() {
      return stops().filter((element) => !element.matches(".table-box, .visually-hidden, .skip-link") && !inText(element))
        .filter((element) => Math.min(box(element).width, box(element).height) < LEAST_TARGET - 0.5)
        .map((element) => `${name(element)} is ${Math.round(box(element).width)} by ${Math.round(box(element).height)} px`);
    },

    // A form that failed says so first of all: in the window's title, and where the keyboard stands.
    failure() {
      const message = document.querySelector(".error-summary:not([hidden]), .asks");
      if (!message) {
        return ["nothing on the page says what to put right"];
      }
      const title = message.matches(".asks") ? /^(Is that right\?|¿Es correcto\?)/ : /^Error: /;
      return [
        ...(title.test(document.title) ? [] : [`the title is "${document.title}"`]),
        ...(message.contains(document.activeElement) ? [] : ["the message has not got the focus"]),
      ];
    },

    startWalk() {
      waiting = new Set(stops().map(groupOf));
      document.activeElement.blur();
    },

    // After each press of Tab: false at the end of the page, else what is wrong with the place of the focus.
    step() {
      const element = document.activeElement;
      if (!element || element === document.body) {
        return false;
      }
      waiting.delete(groupOf(element));
      const marked = [element, element.nextElementSibling].filter(Boolean).map((one) => getComputedStyle(one))
        .some((style) => style.outlineStyle !== "none" && parseFloat(style.outlineWidth) >= 2);
      const place = element.getClientRects()[0];
      const hit = place && document.elementFromPoint(place.left + place.width / 2, place.top + place.height / 2);
      const seen = hit && (element.contains(hit) || hit.contains(element) || [...(element.labels || [])].includes(hit));
      return [
        ...(marked ? [] : [`${name(element)} does not show that it has the focus`]),
        ...(seen ? [] : [`${name(element)} is hidden while it has the focus`]),
      ];
    },

    endWalk() {
      return [...waiting].map((left) => `the Tab key does not reach ${typeof left === "string" ? left : name(left)}`);
    },
  };
})();
