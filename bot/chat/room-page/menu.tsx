import { useState } from "preact/hooks";
import { rememberHere } from "./kept.ts";
import { Lazy } from "./lazy.tsx";
import { LeaveKey, ReturnPanel } from "./returning.tsx";
import { useRoom, useRoomPart } from "./room-context.ts";
import { Sheet } from "./sheet.tsx";
import type { Theme } from "./state.ts";
import { canSpeak } from "./voice.ts";
import type { Language } from "../../../store/shapes/language.ts";
import { LANGUAGE_NAMES } from "./word-books.ts";
import { useWords } from "./words.ts";

type Panel = "menu" | "keys" | "newClass" | "phone" | "push";

const loadKeys = () => import("./keys-panel.tsx").then(({ KeysPanel }) => KeysPanel);
const loadPush = () => import("./push-panel.tsx").then(({ PushPanel }) => PushPanel);
const loadNewClass = () => import("./new-class.tsx").then(({ NewClassPanel }) => NewClassPanel);

export function Menu({ first = "menu", onClose }: { first?: Panel; onClose: () => void }) {
  const words = useWords();
  const { menu } = words;
  const facts = useRoomPart((state) => state.facts);
  const [panel, setPanel] = useState<Panel>(first);
  const title = {
    menu: menu.title,
    keys: words.keys.title,
    newClass: words.newClass.title,
    phone: words.returning.title,
    push: words.push.title,
  }[panel];
  const isStaff = facts !== null && facts.you.role !== "student";
  return (
    <Sheet title={title} onClose={onClose}>
      {panel === "keys" && <Lazy load={loadKeys} />}
      {panel === "newClass" && <Lazy load={loadNewClass} />}
      {panel === "phone" && <ReturnPanel />}
      {panel === "push" && <Lazy load={loadPush} />}
      {panel === "menu" && facts && (
        <div class="menu">
          <p class="menu-you">{menu.you(facts.you.name, words.roles[facts.you.role])}</p>
          {isStaff && (
            <button type="button" class="key" onClick={() => setPanel("keys")}>
              {menu.door}
            </button>
          )}
          {isStaff && (
            <a class="key" href="/board">
              {menu.board}
            </a>
          )}
          {facts.class.isDemo && facts.you.role === "teacher" && (
            <button type="button" class="key main" onClick={() => setPanel("newClass")}>
              {menu.newClass}
            </button>
          )}
          <Preferences />
          <button type="button" class="key" onClick={() => setPanel("push")}>
            {words.push.title}
          </button>
          {facts.you.role !== "teacher" && (
            <button type="button" class="key" onClick={() => setPanel("phone")}>
              {words.returning.menu}
            </button>
          )}
          <LeaveKey />
        </div>
      )}
    </Sheet>
  );
}

function Preferences() {
  const { menu } = useWords();
  const room = useRoom();
  const theme = useRoomPart((state) => state.theme);
  const language = useRoomPart((state) => state.language);
  const isSoundOn = useRoomPart((state) => state.isSoundOn);
  const isSpeechOn = useRoomPart((state) => state.isSpeechOn);
  const themes: readonly (readonly [Theme, string])[] = [
    ["auto", menu.themeAuto],
    ["daylight", menu.themeDaylight],
    ["safelight", menu.themeSafelight],
  ];
  return (
    <>
      <fieldset class="pick">
        <legend>{menu.theme}</legend>
        {themes.map(([value, label]) => (
          <label key={value}>
            <input
              type="radio"
              name="theme"
              checked={theme === value}
              onChange={() => {
                room.store.set({ theme: value });
                rememberHere("theme", value);
              }}
            />
            <span>{label}</span>
          </label>
        ))}
      </fieldset>
      <fieldset class="pick">
        <legend>{menu.language}</legend>
        {(Object.keys(LANGUAGE_NAMES) as Language[]).map((value) => (
          <label key={value} lang={value}>
            <input
              type="radio"
              name="language"
              checked={language === value}
              onChange={() => room.speak(value)}
            />
            <span>{LANGUAGE_NAMES[value]}</span>
          </label>
        ))}
      </fieldset>
      <p class="hint">{menu.themeCaution}</p>
      <label class="check">
        <input
          type="checkbox"
          checked={isSoundOn}
          onChange={(event) => {
            room.store.set({ isSoundOn: event.currentTarget.checked });
            rememberHere("sound", event.currentTarget.checked);
          }}
        />
        <span>{menu.sound}</span>
      </label>
      {canSpeak() && (
        <label class="check">
          <input
            type="checkbox"
            checked={isSpeechOn}
            onChange={(event) => {
              room.store.set({ isSpeechOn: event.currentTarget.checked });
              rememberHere("speech", event.currentTarget.checked);
            }}
          />
          <span>{menu.speech}</span>
        </label>
      )}
      <button type="button" class="key" onClick={() => room.alarm.play([{ sound: "change", voice: 0 }])}>
        {menu.soundTest}
      </button>
    </>
  );
}
