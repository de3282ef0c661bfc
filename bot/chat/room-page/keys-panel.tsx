import { useEffect, useState } from "preact/hooks";
import type { DoorSheet } from "../room/wire.ts";
import { api, type Answer, type DoorFault, type ShownSecrets } from "./api.ts";
import { SecureState } from "./secure-state.tsx";
import { PushAllowed } from "./push-panel.tsx";
import { SinkPanel } from "./sink-panel.tsx";
import { Renew } from "./renew.tsx";
import { ReturnPanel } from "./returning.tsx";
import { useRoomPart } from "./room-context.ts";
import { sayInstant } from "./instant.ts";
import { useWords } from "./words.ts";

/** The class's door for staff: the code and its picture, who is in, on which devices. */
export function KeysPanel() {
  const words = useWords();
  const { keys, renewing } = words;
  const isTeacher = useRoomPart((state) => state.facts?.you.role) === "teacher";
  const [sheet, setSheet] = useState<DoorSheet | null>(null);
  const [fault, setFault] = useState<DoorFault | null>(null);
  const [secrets, setSecrets] = useState<ShownSecrets | null>(null);

  async function take(asking: Promise<Answer<DoorSheet>>): Promise<void> {
    const answer = await asking;
    setFault(answer.ok ? null : answer.code);
    if (answer.ok) setSheet(answer.value);
  }
  async function renewPassphrases(isOut: boolean): Promise<void> {
    const answer = await api.passphrases(isOut);
    if (!answer.ok) return setFault(answer.code);
    setSecrets(answer.value);
    await take(api.door());
  }
  useEffect(() => void take(api.door()), []);

  return (
    <div class="keys">
      {fault && (
        <p class="fault" role="alert">
          {words.doorFaults[fault]}
        </p>
      )}
      {sheet && (
        <>
          <figure class="join-code">
            {/* The code is in the address, so that a new code is a new picture. */}
            <span class="qr">
              <img src={`/api/door/qr.svg?${sheet.joinCode}`} alt={keys.scan} />
            </span>
            <figcaption>
              <span>{keys.code}</span>
              <strong class="code">{sheet.joinCode}</strong>
              {sheet.joinUrls.map((url) => (
                <code key={url}>{url}</code>
              ))}
            </figcaption>
          </figure>
          {sheet.joinUrls.every(isOnlyHere) && <p class="fault">{keys.onlyHere}</p>}
          {isTeacher && <SecureState sheet={sheet} />}
          {isTeacher && (
            <Renew
              label={keys.rotate}
              hint={renewing.codeHint}
              keep={renewing.codeKeep}
              signOut={renewing.codeOut(devicesOf(sheet, true))}
              leave={renewing.leave}
              onRenew={(isOut) => void take(api.rotate(isOut))}
            />
          )}
          <h3>{keys.people}</h3>
          <People sheet={sheet} take={take} />
          {isTeacher && (
            <Renew
              label={keys.passphrases}
              hint={renewing.passphrasesHint}
              keep={renewing.passphrasesKeep}
              signOut={renewing.passphrasesOut(Math.max(0, devicesOf(sheet, false) - 1))}
              leave={renewing.leave}
              isDanger
              onRenew={(isOut) => void renewPassphrases(isOut)}
            />
          )}
          {isTeacher && <PushAllowed sheet={sheet} reload={() => take(api.door())} />}
          {isTeacher && <SinkPanel sheet={sheet} reload={() => take(api.door())} />}
          {(isTeacher || sheet.calendarUrl !== null) && (
            <Calendar url={sheet.calendarUrl} isTeacher={isTeacher} take={take} />
          )}
          {isTeacher && sheet.inviteUrl !== null && <Invite url={sheet.inviteUrl} />}
          {secrets && <Secrets secrets={secrets} />}
        </>
      )}
    </div>
  );
}

function Calendar({
  url,
  isTeacher,
  take,
}: {
  url: string | null;
  isTeacher: boolean;
  take: (asking: Promise<Answer<DoorSheet>>) => Promise<void>;
}) {
  const { calendar } = useWords();
  return (
    <>
      <h3>{calendar.title}</h3>
      {url !== null && <code>{url}</code>}
      <p class="hint">{url === null ? calendar.none : calendar.hint}</p>
      {isTeacher && (
        <p class="with-key">
          <button type="button" class="key" onClick={() => void take(api.calendar(true))}>
            {url === null ? calendar.make : calendar.renew}
          </button>
          {url !== null && (
            <button type="button" class="key" onClick={() => void take(api.calendar(false))}>
              {calendar.stop}
            </button>
          )}
        </p>
      )}
    </>
  );
}

/** The bot on a server of the class's own, beside this room. */
function Invite({ url }: { url: string }) {
  const { invite } = useWords();
  return (
    <>
      <h3>{invite.title}</h3>
      <p class="hint">{invite.hint}</p>
      <p class="with-key">
        <a class="key" href={url} target="_blank" rel="noreferrer">
          {invite.add}
        </a>
      </p>
    </>
  );
}

function devicesOf({ people }: DoorSheet, areStudents: boolean): number {
  return people
    .filter(({ role }) => (role === "student") === areStudents)
    .reduce((sum, { devices }) => sum + devices.length, 0);
}

function isOnlyHere(url: string): boolean {
  return ["127.0.0.1", "localhost", "[::1]"].includes(new URL(url).hostname);
}

export function Secrets({ secrets }: { secrets: ShownSecrets }) {
  const { keys } = useWords();
  return (
    <div class="secrets" role="status">
      <p>{keys.writeDown}</p>
      <dl>
        <dt>{keys.code}</dt>
        <dd class="code">{secrets.joinCode}</dd>
        <dt>{keys.teacherIs}</dt>
        <dd class="code">{secrets.teacherPassphrase}</dd>
        <dt>{keys.aideIs}</dt>
        <dd class="code">{secrets.aidePassphrase}</dd>
      </dl>
    </div>
  );
}

function People({
  sheet,
  take,
}: {
  sheet: DoorSheet;
  take: (asking: Promise<Answer<DoorSheet>>) => Promise<void>;
}) {
  const { keys, roles, returning } = useWords();
  const [codeFor, setCodeFor] = useState<string | null>(null);
  const me = useRoomPart((state) => state.facts?.you.id);
  return (
    <ul class="people">
      {sheet.people.map(({ id, name, role, isHere, devices }) => (
        <li key={id}>
          <p>
            <strong>{name}</strong> {roles[role]}, {isHere ? keys.isHere : keys.away}
            {devices.length === 0 && `, ${keys.noDevices}`}
          </p>
          {id !== me && devices.length > 0 && (
            <button type="button" class="key" title={keys.freeHint} onClick={() => void take(api.free(id))}>
              {keys.free}
            </button>
          )}
          {id !== me && role !== "teacher" && (
            <button
              type="button"
              class="key"
              aria-expanded={codeFor === id}
              onClick={() => setCodeFor(codeFor === id ? null : id)}
            >
              {returning.forThem}
            </button>
          )}
          {codeFor === id && <ReturnPanel personId={id} />}
          {devices.length > 1 && (
            <ul>
              {devices.map(({ handle, device, seenAt }) => (
                <li key={handle}>
                  {keys.devices[device] ?? device}, {keys.seen(sayInstant(seenAt, "date", undefined))}{" "}
                  <button type="button" class="key" onClick={() => void take(api.removeDevice(handle))}>
                    {keys.removeDevice}
                  </button>
                </li>
              ))}
            </ul>
          )}
        </li>
      ))}
    </ul>
  );
}
