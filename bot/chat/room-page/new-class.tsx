import { useState } from "preact/hooks";
import { api, type DoorFault, type ShownSecrets } from "./api.ts";
import { Field } from "./field.tsx";
import { Secrets } from "./keys-panel.tsx";
import { useRoomPart } from "./room-context.ts";
import { useWords } from "./words.ts";

/** From the invented class to one's own: a new, empty one, with its first teacher signed in. */
export function NewClassPanel() {
  const words = useWords();
  const { newClass } = words;
  const language = useRoomPart((state) => state.language);
  const [name, setName] = useState("");
  const [teacher, setTeacher] = useState("");
  const [zone, setZone] = useState(Intl.DateTimeFormat().resolvedOptions().timeZone);
  const [fault, setFault] = useState<DoorFault | null>(null);
  const [secrets, setSecrets] = useState<ShownSecrets | null>(null);
  if (secrets)
    return (
      <div class="keys">
        <p>{newClass.made}</p>
        <Secrets secrets={secrets} />
        <button type="button" class="key main" onClick={() => location.assign("/")}>
          {newClass.goIn}
        </button>
      </div>
    );
  return (
    <form
      class="command-form"
      onSubmit={(event) => {
        event.preventDefault();
        void api
          .newClass(name, zone, teacher, language)
          .then((answer) => (answer.ok ? setSecrets(answer.value) : setFault(answer.code)));
      }}
    >
      <p>{newClass.lead}</p>
      {fault && (
        <p class="fault" role="alert">
          {words.doorFaults[fault]}
        </p>
      )}
      <Field label={newClass.className} value={name} onValue={setName} isRequired />
      <Field label={newClass.yourName} value={teacher} onValue={setTeacher} isRequired />
      <Field label={newClass.zone} value={zone} onValue={setZone} isRequired />
      <button class="key main">{newClass.make}</button>
    </form>
  );
}
