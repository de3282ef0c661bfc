import { useEffect, useState } from "preact/hooks";
import { formatSeconds } from "../../../commands/speech/wording.ts";
import { Composer } from "./composer.tsx";
import { CallScreen } from "./call-screen.tsx";
import { FirstDay } from "./first-day.tsx";
import { Forms } from "./forms.tsx";
import { LinkState, LostBanner, StaleLines } from "./link-state.tsx";
import { Log } from "./log.tsx";
import { Menu } from "./menu.tsx";
import { PlanCard } from "./plan-card.tsx";
import { SoundBar } from "./sound-bar.tsx";
import { useRoom, useRoomPart } from "./room-context.ts";
import { RunCard } from "./run-card.tsx";
import { secondsTo, useToldTime } from "./ticking.ts";
import { arrangeWall, orderOf } from "./wall.ts";
import { useFormDesk, useReopenedForm } from "./use-forms.ts";
import { useWords } from "./words.ts";

/** The room itself: one's own film above, the log below it, the line to type at the foot. */
export function Bench({ onGuide }: { onGuide: () => void }) {
  const words = useWords();
  const facts = useRoomPart((state) => state.facts);
  const [open, setOpen] = useState<"menu" | "door" | "forms" | null>(null);
  const [form, setForm] = useState<string | null>(null);
  const forms = useFormDesk();
  useReopenedForm();
  const fill = useRoomPart((state) => state.fill);
  const openForm = (name: string | null): void => {
    setForm(name);
    setOpen("forms");
  };
  return (
    <div class="bench">
      <header class="top">
        <h1>{facts ? words.classCalled(facts.class.name) : words.name}</h1>
        <LinkState />
        <button type="button" class="key" onClick={() => setOpen("menu")}>
          {words.menu.open}
        </button>
      </header>
      <div class="bars">
        <LostBanner />
        <SoundBar />
      </div>
      <main class="bench-main">
        <MyRuns onPlan={() => openForm("plan")} onGuide={onGuide} onDoor={() => setOpen("door")} />
        <Log />
      </main>
      <footer class="foot">
        <StaleLines />
        <Composer onForms={() => openForm(null)} />
      </footer>
      <CallScreen />
      <PageTitle />
      {open === "menu" && <Menu onClose={() => setOpen(null)} />}
      {open === "door" && <Menu first="keys" onClose={() => setOpen(null)} />}
      {open === "forms" && <Forms first={form} onClose={() => setOpen(null)} />}
      {fill && <Forms first={fill.command} fill={fill} onClose={forms.close} />}
    </div>
  );
}

interface MyRunsProps {
  onPlan(): void;
  onGuide(): void;
  onDoor(): void;
}

function MyRuns({ onPlan, onGuide, onDoor }: MyRunsProps) {
  const { runs, guide } = useWords();
  const isDemo = useRoomPart((state) => state.facts?.class.isDemo);
  const room = useRoom();
  const views = useRoomPart((state) => state.views);
  const plan = useRoomPart((state) => state.plan);
  const firstDay = useRoomPart((state) => state.firstDay);
  const isGoing = views.some(({ phase }) => phase === "running" || phase === "waiting");
  useEffect(() => room.wake.want(isGoing), [isGoing]);
  return (
    <section class="my-runs" tabIndex={-1} aria-label={runs.title}>
      <FirstDay onDoor={onDoor} />
      {views.length === 0 && plan === null && firstDay === null && (
        <div class="no-run">
          <p>
            <strong>{runs.none}</strong> {runs.noneHint}
          </p>
          <button type="button" class="key main" onClick={onPlan}>
            {runs.makePlan}
          </button>
          {isDemo && (
            <button type="button" class="key" onClick={onGuide}>
              {guide.show}
            </button>
          )}
        </div>
      )}
      {views.map((view) => (
        <RunCard key={view.run} view={view} />
      ))}
      <PlanCard onPlan={onPlan} />
      <ClassRuns />
      {isGoing && room.wake.by === "video" && <p class="hint">{runs.heldByVideo}</p>}
    </section>
  );
}

/** Staff see every tank beside their own: who waits, and whose bath ends next. */
function ClassRuns() {
  const { runs } = useWords();
  const room = useRoom();
  const you = useRoomPart((state) => state.facts?.you);
  const rows = useRoomPart((state) => state.wall);
  const isStaff = you !== undefined && you.role !== "student";
  useEffect(() => {
    if (!isStaff) return undefined;
    room.watchTanks("desk");
    return () => room.watchTanks(null);
  }, [isStaff]);
  useToldTime((now) => orderOf(arrangeWall(rows, now)), 5000);
  const { large, small } = arrangeWall(rows, room.clock.now());
  const others = [...large, ...small].flatMap(({ row }) => (row.ownerId === you?.id ? [] : [row]));
  if (!isStaff || others.length === 0) return null;
  return (
    <details class="class-runs" open={matchMedia("(min-width: 54rem)").matches}>
      <summary>{runs.ofClass(others.length)}</summary>
      {others.map((row) => (
        <RunCard key={`${row.ownerId} ${row.run}`} view={row} owner={row.owner} />
      ))}
    </details>
  );
}

/** The countdown stands in the tab's name too, for a desk where the page is behind another. */
function PageTitle() {
  const { name } = useWords();
  const view = useRoomPart((state) => state.views).find(({ phase }) => phase === "running");
  const title = useToldTime((now) => {
    const left = view?.endsAt != null ? secondsTo(view.endsAt, now, view.speed) : -1;
    return view && left >= 0 ? `${formatSeconds(left)} ${view.title}` : name;
  }, 1000);
  useEffect(() => void (document.title = title), [title]);
  return null;
}
