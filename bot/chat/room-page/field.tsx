import { useId } from "preact/hooks";

interface FieldProps {
  readonly label: string;
  readonly hint?: string;
  readonly value: string;
  onValue(value: string): void;
  readonly type?: "text" | "password";
  readonly autoComplete?: string;
  readonly isCode?: boolean;
  readonly isRequired?: boolean;
}

export function Field({ label, hint, value, onValue, type = "text", ...rest }: FieldProps) {
  const id = useId();
  const common = {
    id,
    value,
    required: rest.isRequired ?? false,
    maxLength: 100,
    class: rest.isCode ? "code-input" : "",
    autocomplete: rest.autoComplete ?? "off",
    autocapitalize: rest.isCode ? ("characters" as const) : ("words" as const),
    spellcheck: false,
    "aria-describedby": hint ? `${id}-hint` : undefined,
    onInput: (event: { currentTarget: HTMLInputElement }) => onValue(event.currentTarget.value),
  };
  return (
    <div class="field">
      <label for={id}>{label}</label>
      {type === "password" ? <input {...common} type="password" /> : <input {...common} type="text" />}
      {hint && (
        <p class="hint" id={`${id}-hint`}>
          {hint}
        </p>
      )}
    </div>
  );
}
