import { useState } from "preact/hooks";
import type { SaidStep } from "../../../commands/class/first-day-words.ts";
import { Actions } from "./actions.tsx";
import { useRoomPart } from "./room-context.ts";
import { Said } from "./said.tsx";
import { useWords } from "./words.ts";

/** What a new class needs before its first film, for its teacher: one step open, the others a press away. */
export function FirstDay({ onDoor }: { onDoor: () => void }) {
  const words = useWords();
  const firstDay = useRoomPart((state) => state.firstDay);
  const isRunning = useRoomPart((state) => state.views.length > 0);
  const [picked, setPicked] = useState<string | null>(null);
  // A run wants its whole panel.
  if (!firstDay || isRunning) return null;
  const { title, steps, done } = firstDay;
  const open = steps.find(({ key, state }) => key === picked && state !== "done");
  const shown = open ?? steps.find(({ state }) => state === "open");
  return (
    <section class="first-day" aria-label={title}>
      <h2>
        {title} <span class="first-day-count digits">{words.firstDay.count(done, steps.length)}</span>
      </h2>
      <ol>
        {steps.map((step) => (
          <li key={step.key} class={`is-${step.state}`} aria-current={step === shown ? "step" : undefined}>
            <StepHead step={step} isShown={step === shown} onPick={() => setPicked(step.key)} />
            {step === shown && (
              <div class="first-day-step">
                <Said text={step.how} />
                {step.key === "code" && (
                  <button type="button" class="key main" onClick={onDoor}>
                    {words.firstDay.showCode}
                  </button>
                )}
                <Actions actions={step.actions} onPress={() => setPicked(null)} />
              </div>
            )}
          </li>
        ))}
      </ol>
    </section>
  );
}

function StepHead({ step, isShown, onPick }: { step: SaidStep; isShown: boolean; onPick: () => void }) {
  const { firstDay } = useWords();
  const { state, title } = step;
  const note = { done: firstDay.done, later: firstDay.later, open: "" }[state];
  const name = (
    <>
      <span class="tick" aria-hidden="true" />
      {title}
      {note !== "" && <span class="first-day-note"> {note}</span>}
    </>
  );
  if (isShown || state === "done") return <p class="first-day-head">{name}</p>;
  return (
    <button type="button" class="first-day-head" onClick={onPick}>
      {name}
    </button>
  );
}
