import { useState } from "preact/hooks";

export interface RenewProps {
  readonly label: string;
  readonly hint: string;
  /** The two ways to do it, asked once the button was pressed. */
  readonly keep: string;
  readonly signOut: string;
  readonly leave: string;
  readonly isDanger?: boolean;
  readonly onRenew: (signOut: boolean) => void;
}

/** A new code or new passphrases: whether whoever came by the old ones goes out is asked, with their number. */
export function Renew({ label, hint, keep, signOut, leave, isDanger = false, onRenew }: RenewProps) {
  const [isAsking, setIsAsking] = useState(false);
  const renew = (isOut: boolean) => () => {
    setIsAsking(false);
    onRenew(isOut);
  };
  if (!isAsking)
    return (
      <p class="with-key">
        <button type="button" class={isDanger ? "key danger" : "key"} onClick={() => setIsAsking(true)}>
          {label}
        </button>
        <span class="hint">{hint}</span>
      </p>
    );
  return (
    <p class="with-key">
      <button type="button" class="key" onClick={renew(false)}>
        {keep}
      </button>
      <button type="button" class="key danger" onClick={renew(true)}>
        {signOut}
      </button>
      <button type="button" class="key" onClick={() => setIsAsking(false)}>
        {leave}
      </button>
    </p>
  );
}
