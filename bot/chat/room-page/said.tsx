import type { Language } from "../../../store/shapes/language.ts";
import { saySeconds } from "../../../commands/speech/wording.ts";
import { fillOf } from "./fill.ts";
import { sayInstant } from "./instant.ts";
import { readBlocks, type Markup } from "./marks.ts";
import { useRoom, useRoomPart } from "./room-context.ts";
import { useToldTime } from "./ticking.ts";
import { useFormDesk } from "./use-forms.ts";

/** The text of a reply, drawn. Everything goes in as text: nothing a person wrote becomes a tag. */
export function Said({ text }: { text: string }) {
  return (
    <div class="said">
      {readBlocks(text).map((block, index) => {
        if (block.kind === "code") return <pre key={index}>{block.text}</pre>;
        if (block.kind === "line")
          return (
            <p key={index}>
              <Marks marks={block.parts} />
            </p>
          );
        const items = block.items.map((parts, at) => (
          <li key={at}>
            <Marks marks={parts} />
          </li>
        ));
        return block.isNumbered ? <ol key={index}>{items}</ol> : <ul key={index}>{items}</ul>;
      })}
    </div>
  );
}

export function Marks({ marks }: { marks: readonly Markup[] }) {
  return (
    <>
      {marks.map((mark, index) => {
        if (mark.kind === "text") return <Plain key={index} text={mark.text} />;
        if (mark.kind === "code") return <Code key={index} text={mark.text} />;
        if (mark.kind === "instant") return <Instant key={index} atMs={mark.atMs} style={mark.style} />;
        const inner = <Marks marks={mark.parts} />;
        return mark.kind === "bold" ? <strong key={index}>{inner}</strong> : <em key={index}>{inner}</em>;
      })}
    </>
  );
}

/** A command within a sentence opens its form, filled in as it stands there: nothing is sent by a tap beside a button. */
function Code({ text }: { text: string }) {
  const forms = useFormDesk();
  const cards = useRoomPart((state) => state.cards);
  const fill = text.startsWith("/") ? fillOf(text, cards) : undefined;
  if (!fill) return <code>{text}</code>;
  return (
    <button type="button" class="in-line" onClick={() => forms.open(fill)}>
      <code>{text}</code>
    </button>
  );
}

/** A number and its unit. */
const AMOUNT = /(\d (?:°[CF]|%|ml|l|g|s|min|h|mm|cm)(?![\p{L}\p{N}]))/u;

/** No line ends between a number and its unit. */
function Plain({ text }: { text: string }) {
  const parts = text.split(AMOUNT);
  return <>{parts.map((part, at) => (at % 2 === 1 ? <span class="amount">{part}</span> : part))}</>;
}

function Instant({ atMs, style }: { atMs: number; style: "time" | "date" | "relative" }) {
  const zone = useRoomPart((state) => state.facts?.class.zone);
  if (style === "relative") return <Relative atMs={atMs} />;
  return <time dateTime={new Date(atMs).toISOString()}>{sayInstant(atMs, style, zone)}</time>;
}

/** Nearer than this each second counts. */
const SOON_MS = 120_000;

/** Counts by itself while it is shown; a long log has hundreds. */
function Relative({ atMs }: { atMs: number }) {
  const { clock } = useRoom();
  const language = useRoomPart((state) => state.language);
  const everyMs = Math.abs(atMs - clock.now()) < SOON_MS ? 1000 : 5000;
  return <>{useToldTime((now) => sayRelative(Math.round((atMs - now) / 1000), language), everyMs)}</>;
}

function sayRelative(seconds: number, language: Language): string {
  if (Math.abs(seconds) >= 3600)
    return new Intl.RelativeTimeFormat(language).format(Math.round(seconds / 3600), "hour");
  if (seconds >= 0) return `in ${saySeconds(seconds)}`;
  return language === "de" ? `vor ${saySeconds(-seconds)}` : `${saySeconds(-seconds)} ago`;
}
