/* A thousand pages in a process of their own: opens a socket for each cookie and tells when each hears a call. */
import { WebSocket } from "ws";

const { url, cookies } = await new Promise((resolve) => process.once("message", resolve));
const sockets = [];
for (let from = 0; from < cookies.length; from += 50)
  sockets.push(...(await Promise.all(cookies.slice(from, from + 50).map(open))));
process.send({ open: sockets.length });

function open(cookie) {
  return new Promise((resolve, reject) => {
    const socket = new WebSocket(`${url.replace("http", "ws")}/live`, { headers: { cookie, origin: url } });
    socket.on("error", reject);
    socket.on("open", () => socket.send(JSON.stringify({ type: "hello", after: null })));
    socket.on("message", (data) => {
      const message = JSON.parse(String(data));
      if (message.type !== "events") return;
      if (message.isReset) resolve(socket);
      // The text of a call is the instant it was sent: one machine, one clock.
      for (const { text } of message.events) if (/^\d+$/.test(text)) heard(Date.now() - Number(text));
    });
  });
}

let latencies = [];
function heard(ms) {
  latencies.push(ms);
  if (latencies.length < cookies.length) return;
  process.send({ latencies });
  latencies = [];
}
