import { useRoom, useRoomPart } from "./room-context.ts";
import { useWords } from "./words.ts";

/** The plan that was made and not started: its time, and the one key that starts it. */
export function PlanCard({ onPlan }: { onPlan: () => void }) {
  const { runs } = useWords();
  const room = useRoom();
  const plan = useRoomPart((state) => state.plan);
  const pending = useRoomPart((state) => state.pending);
  if (!plan) return null;
  // A number and its unit stay in one line.
  const temperature = plan.temperature.replaceAll(" ", "\u00a0");
  return (
    <article class="run is-planned" tabIndex={-1} aria-label={plan.plan}>
      <p class="planned">
        {plan.plan}: <strong class="digits">{plan.time}</strong> {runs.planned(plan.bath, temperature)}
      </p>
      <p class="run-name">{plan.tank === null ? plan.film : `${plan.film} · ${runs.tank(plan.tank)}`}</p>
      {room.wake.by === "none" && (
        <p>
          <strong>{runs.mayGoDark}</strong>
        </p>
      )}
      <div class="actions">
        {/* Pressed twice, it would start two runs. */}
        <button
          type="button"
          class="key main"
          disabled={pending.some(({ text }) => text === plan.line)}
          onClick={() => room.say(plan.line, runs.start)}
        >
          {runs.start}
        </button>
        <button type="button" class="key" onClick={onPlan}>
          {runs.otherPlan}
        </button>
      </div>
    </article>
  );
}
