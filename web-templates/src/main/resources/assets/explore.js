// Lets a reader look closer at the season: a cursor with values, and zooming. The pictures of the page need none of this.
(() => {
  "use strict";
  const HEIGHT = 150;
  const AHEAD_S = 72 * 3600;
  const words = self.tankroundsWords;
  const say = words && words.of(document.currentScript);
  const season = document.querySelector(".season[data-series]");
  if (!season || !say || !window.fetch) {
    return;
  }
  const pictures = season.querySelector(".season__charts");
  const spans = season.querySelector(".season__spans");
  const button = document.createElement("button");
  button.type = "button";
  button.className = "link-button";
  button.dataset.explore = "";
  button.textContent = say("explore");
  button.setAttribute("aria-pressed", "false");
  spans.append(button);
  let explore = null;

  const load = (tag, attributes) => new Promise((resolve, reject) => {
    const element = document.createElement(tag);
    element.onload = resolve;
    element.onerror = reject;
    Object.assign(element, attributes);
    document.head.append(element);
  });

  const color = (name) => getComputedStyle(document.documentElement).getPropertyValue(name).trim();

  // One row a moment, as the chart library wants it; a null ends a line where the gap is too long to join.
  const table = (series, longest, whole) => {
    const rows = new Map();
    const row = (time) => {
      if (!rows.has(time)) {
        rows.set(time, { read: undefined, low: undefined, middle: undefined, high: undefined, limits: [] });
      }
      return rows.get(time);
    };
    let before = null;
    for (const [time, level] of series.points) {
      if (before !== null && time - before > longest) {
        row(before + 1).read = null;
      }
      row(time).read = level;
      before = time;
    }
    for (const [time, low, middle, high] of series.fan) {
      Object.assign(row(time), { low, middle, high });
    }
    row(whole[0]);
    row(whole[1]);
    const times = [...rows.keys()].sort((a, b) => a - b);
    const level = (steps, time) => steps.reduce((held, [from, limit]) => (from <= time ? limit : held), steps[0][1]);
    return [
      times,
      times.map((time) => rows.get(time).read),
      times.map((time) => rows.get(time).high),
      times.map((time) => rows.get(time).middle),
      times.map((time) => rows.get(time).low),
      ...series.limits.map((steps) => times.map((time) => level(steps, time))),
    ];
  };

  const day = new Intl.DateTimeFormat(words.locale, { day: "numeric", month: "short" });
  const moment = new Intl.DateTimeFormat(words.locale, { weekday: "short", day: "numeric", month: "short", hour: "numeric", minute: "2-digit" });

  const draw = (series, longest, sync, whole) => {
    const box = document.createElement("div");
    box.className = "explore__chart";
    explore.append(box);
    const name = document.createElement("h3");
    name.textContent = series.name;
    box.append(name);
    const number = (value) => (value > 0 && value < 0.0001 ? say("under", "0.0001") : String(Number(value.toPrecision(3))));
    const digits = (_, value) => (value === null || value === undefined ? "–" : number(value));
    const stepped = window.uPlot.paths.stepped({ align: 1 });
    const lines = [
      { label: say("when"), value: (_, time) => (time === null ? "–" : moment.format(new Date(time * 1000))) },
      { label: say("read"), stroke: color("--ink"), width: 1.5, points: { show: true, size: 5 }, value: digits },
      { label: say("high"), stroke: color("--fan-narrow"), points: { show: false }, value: digits, spanGaps: true },
      { label: say("middle"), stroke: color("--deep"), dash: [2, 3], points: { show: false }, value: digits, spanGaps: true },
      { label: say("low"), stroke: color("--fan-narrow"), points: { show: false }, value: digits, spanGaps: true },
      ...series.limits.map(() => ({ label: say("limit"), paths: stepped, stroke: color("--limit"), dash: [5, 3], points: { show: false }, value: digits, spanGaps: true })),
    ];
    const axis = { stroke: color("--ink-soft"), grid: { stroke: color("--rule"), width: 1 }, ticks: { stroke: color("--rule"), width: 1 } };
    const chart = new window.uPlot({
      width: explore.clientWidth, height: HEIGHT,
      cursor: { sync: { key: sync } },
      scales: { y: { range: (_, low, high) => [Math.min(low ?? series.low, series.low), Math.max(high ?? series.high, series.high)] } },
      axes: [{ ...axis, values: (_, times) => times.map((time) => day.format(new Date(time * 1000))) }, { ...axis, size: 52 }],
      bands: [{ series: [2, 4], fill: color("--fan-wide") }],
      series: lines,
    }, table(series, longest, whole), box);
    window.addEventListener("resize", () => chart.setSize({ width: explore.clientWidth, height: HEIGHT }));
  };

  const start = async () => {
    const [answer] = await Promise.all([
      fetch(season.dataset.series, { credentials: "same-origin" }),
      load("link", { rel: "stylesheet", href: season.dataset.style }),
      load("script", { src: season.dataset.script }),
    ]);
    const data = await answer.json();
    explore = document.createElement("div");
    explore.className = "explore";
    const hint = document.createElement("p");
    hint.className = "small soft";
    hint.textContent = say("hint");
    explore.append(hint);
    pictures.before(explore);
    pictures.hidden = true;
    data.series.filter((series) => series.points.length > 0 || series.fan.length > 0)
      .forEach((series) => draw(series, data.longestJoinedSeconds, "season", [data.from, data.asOf + AHEAD_S]));
  };

  button.addEventListener("click", async () => {
    const on = button.getAttribute("aria-pressed") !== "true";
    button.disabled = true;
    try {
      if (on && !explore) {
        await start();
      }
      if (explore) {
        explore.hidden = !on;
        pictures.hidden = on;
        button.setAttribute("aria-pressed", String(on));
      }
    } catch (error) {
      button.remove();
    }
    button.disabled = false;
  });
})();
