// The kill switch: handed out in place of the worker, it forgets the pages that were kept, and itself. What waits in
// the outbox stays.
self.addEventListener("install", () => self.skipWaiting());
self.addEventListener("activate", (event) => event.waitUntil((async () => {
  const names = await caches.keys();
  await Promise.all(names.filter((name) => name.startsWith("tankrounds-")).map((name) => caches.delete(name)));
  await self.registration.unregister();
})()));
