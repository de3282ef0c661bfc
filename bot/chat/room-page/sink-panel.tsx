import { useState } from "preact/hooks";
import type { DoorSheet } from "../room/wire.ts";
import { api, type Answer, type DoorFault } from "./api.ts";
import { sayInstant } from "./instant.ts";
import { useWords } from "./words.ts";

/** A teacher's devices at the sink: which there are, who works at each, and the word that locks or ends one. */
export function SinkPanel({ sheet, reload }: { sheet: DoorSheet; reload: () => Promise<void> }) {
  const { sink, keys, doorFaults } = useWords();
  const [fault, setFault] = useState<DoorFault | null>(null);
  const act = async (asking: Promise<Answer<unknown>>): Promise<void> => {
    const answer = await asking;
    setFault(answer.ok ? null : answer.code);
    if (answer.ok) await reload();
  };
  return (
    <>
      <h3>{sink.panel}</h3>
      <p class="hint">{sink.panelLead}</p>
      {fault && (
        <p class="fault" role="alert">
          {doorFaults[fault]}
        </p>
      )}
      <ul class="people">
        {sheet.sinks.map(({ id, device, seenAt, isLocked, people }) => (
          <li key={id}>
            <p>
              <strong>{keys.devices[device] ?? device}</strong>{" "}
              {people.length > 0 ? people.join(", ") : sink.nobody},{" "}
              {keys.seen(sayInstant(seenAt, "date", undefined))}
            </p>
            <span class="chips">
              <button type="button" class="key" onClick={() => void act(api.sinkLock(id, !isLocked))}>
                {isLocked ? sink.unlock : sink.lock}
              </button>
              <button type="button" class="key danger" onClick={() => void act(api.sinkClose(id))}>
                {sink.end}
              </button>
            </span>
          </li>
        ))}
      </ul>
      <p class="with-key">
        <button
          type="button"
          class="key"
          onClick={() =>
            void api.sinkOpen().then((opened) => (opened.ok ? location.assign("/") : setFault(opened.code)))
          }
        >
          {sink.open}
        </button>
        <span class="hint">{sink.openHint}</span>
      </p>
    </>
  );
}
