// Keeps the class's form at hand without Wi-Fi. The service writes BUILD, ASSETS and OUTBOX in front of this.
importScripts(OUTBOX);

const OURS = "tankrounds-";
const ASSET_CACHE = OURS + "assets-" + BUILD;
const PAGE_CACHE = OURS + "pages-" + BUILD;
const NETWORK_WITHIN_MS = 4000;
const ACCOUNT = "Tankrounds-Account";
const MADE_FOR = [ACCOUNT, "Content-Language"];
const KEPT_PAGES = /^\/(tanks|tanks\/[^/]+\/log|release\/plans\/\d+\/tanks\/[^/]+|release\/sites\/\d+\/checks\/new|outbox)$/;
const COMES_OR_GOES = /^\/(sign-in|sign-out|card)$/;

// Rises with everybody who comes or goes: a page that was asked for by the one before is not kept for the next.
let turn = 0;

self.addEventListener("install", (event) => {
  event.waitUntil(caches.open(ASSET_CACHE).then((cache) => cache.addAll(ASSETS)).then(() => self.skipWaiting()));
});

self.addEventListener("activate", (event) => {
  event.waitUntil(takeOver().then(() => self.clients.claim()));
});

self.addEventListener("message", (event) => {
  event.waitUntil(forgetOthers(event.data.account).then(() => fetchPages(event.data.pages || [])));
});

// Only hurries what the pages do themselves; it fails on purpose, so that the browser tries again.
self.addEventListener("sync", (event) => {
  event.waitUntil(self.tankroundsOutbox.flush().then((end) => {
    if (end.left > 0) {
      throw new Error("readings are left");
    }
  }));
});

self.addEventListener("fetch", (event) => {
  const request = event.request;
  const url = new URL(request.url);
  if (url.origin !== self.location.origin) {
    return;
  }
  if (request.method === "POST" && COMES_OR_GOES.test(url.pathname)) {
    event.waitUntil(forgetPages());
  } else if (request.method === "GET" && ASSETS.includes(url.pathname)) {
    event.respondWith(asset(request));
  } else if (request.method === "GET" && request.mode === "navigate" && isForOffline(url.pathname)) {
    event.respondWith(page(event, url));
  }
});

const isForOffline = (path) => path === "/" || KEPT_PAGES.test(path);

// The build before this one goes, but the pages that worked without Wi-Fi go on doing so.
const takeOver = async () => {
  const old = (await caches.keys()).filter((name) => name.startsWith(OURS) && ![ASSET_CACHE, PAGE_CACHE].includes(name));
  const kept = await Promise.all(old.map(async (name) => (await caches.open(name)).keys()));
  const paths = kept.flat().map((request) => new URL(request.url).pathname);
  await fetchPages(paths);
  await Promise.all(old.map((name) => caches.delete(name)));
};

const forgetPages = () => {
  turn += 1;
  return caches.delete(PAGE_CACHE);
};

// Somebody may have come in past this worker.
const forgetOthers = async (account) => {
  const before = await anyKept(await caches.open(PAGE_CACHE));
  if (account && before && before.headers.get(ACCOUNT) !== account) {
    await forgetPages();
  }
};

const anyKept = async (cache) => {
  const [one] = await cache.keys();
  return one && cache.match(one);
};

const fetchPages = async (paths) => {
  const mine = turn;
  const cache = await caches.open(PAGE_CACHE);
  for (const path of paths.filter((one) => KEPT_PAGES.test(one))) {
    if (!(await cache.match(path))) {
      await fetch(path, { credentials: "same-origin" }).then((answer) => keepPage(path, answer, mine)).catch(() => {});
    }
  }
};

const asset = async (request) => {
  const cache = await caches.open(ASSET_CACHE);
  return await cache.match(request) || fetch(request);
};

// The network first; what was kept only where it does not answer in time, or a proxy says that nobody is behind it.
const page = async (event, url) => {
  const mine = turn;
  const fromNetwork = fetch(event.request);
  const copy = fromNetwork.then((answer) => answer.clone());
  event.waitUntil(copy.then((answer) => keepPage(url.search ? "" : url.pathname, answer, mine)).catch(() => {}));
  const cache = await caches.open(PAGE_CACHE);
  const kept = await cache.match(url.pathname);
  if (!kept) {
    return fromNetwork.catch(() => nearest(cache));
  }
  const inTime = await Promise.race([fromNetwork.catch(() => null), later(NETWORK_WITHIN_MS)]);
  return inTime && inTime.status < 500 ? inTime : kept;
};

const nearest = async (cache) => {
  for (const path of ["/tanks", "/outbox"]) {
    if (await cache.match(path)) {
      return Response.redirect(path);
    }
  }
  return Response.error();
};

const later = (milliseconds) => new Promise((resolve) => { setTimeout(() => resolve(null), milliseconds); });

// Neither errors nor the way to the sign-in page nor what a portal shows; and never one person's beside another's,
// or in another language.
const keepPage = async (path, answer, asked) => {
  if (!KEPT_PAGES.test(path) || answer.status !== 200 || answer.redirected || !answer.headers.get(ACCOUNT)
      || asked !== turn) {
    return;
  }
  const cache = await caches.open(PAGE_CACHE);
  const before = await anyKept(cache);
  if (before && MADE_FOR.some((name) => before.headers.get(name) !== answer.headers.get(name))) {
    await caches.delete(PAGE_CACHE);
    await (await caches.open(PAGE_CACHE)).put(path, answer);
  } else {
    await cache.put(path, answer);
  }
};
