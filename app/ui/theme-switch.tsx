import styles from "./theme-switch.module.css";

/** What a person may choose on the desk: one theme, or what the system says. */
export type ThemeChoice = "light" | "dark" | "system";

/** One theme that can be chosen: its value in the form, and its word. */
export interface ThemeOption<Value extends string> {
  readonly value: Value;
  readonly word: string;
}

/** The office's three choices. */
export const deskThemes: readonly ThemeOption<ThemeChoice>[] = [
  { value: "light", word: "Light" },
  { value: "dark", word: "Dark" },
  { value: "system", word: "As the system" },
];

/** The crew phone's two: it never follows the system, because the system can't see the sun. */
export const truckThemes: readonly ThemeOption<"sun" | "dark">[] = [
  { value: "sun", word: "Sun" },
  { value: "dark", word: "Dusk" },
];

export interface ThemeSwitchProps<Value extends string> {
  readonly options: readonly ThemeOption<Value>[];
  readonly chosen: Value;
  /** Stores the choice; receives a form whose field `theme` is the chosen value. Works without scripts. */
  readonly action: string | ((form: FormData) => void | Promise<void>);
}

/** Chooses the theme: one row of keys, of which one is down. */
export function ThemeSwitch<Value extends string>({ options, chosen, action }: ThemeSwitchProps<Value>) {
  return (
    <form className={styles.switch} action={action} method={typeof action === "string" ? "post" : undefined}>
      <fieldset>
        <legend className={styles.legend}>Screen</legend>
        <div className={styles.keys}>
          {options.map((option) => (
            <button
              key={option.value}
              type="submit"
              name="theme"
              value={option.value}
              aria-pressed={option.value === chosen}
            >
              {option.word}
            </button>
          ))}
        </div>
      </fieldset>
    </form>
  );
}
