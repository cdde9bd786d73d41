import { type ReactNode } from "react";
import { Button } from "#ui/button";
import styles from "./undo-bar.module.css";

type FormAction = string | ((form: FormData) => void | Promise<void>);

export interface UndoBarProps {
  /** What happened, as a sentence with its figures: "Moved. Adds 9 min; fill A is short by 12 fl oz." */
  readonly children: ReactNode;
  /** Takes it back. Only plans can be taken back, never records. */
  readonly undo?: FormAction;
  /** Takes the bar away. It never goes by itself. */
  readonly dismiss?: FormAction;
}

/** One line at the foot of the screen about what was just done, with the way back. */
export function UndoBar({ children, undo, dismiss }: UndoBarProps) {
  return (
    <div className={styles.bar} role="status">
      <p>{children}</p>
      {undo !== undefined && <BarForm action={undo} word="Undo" />}
      {dismiss !== undefined && <BarForm action={dismiss} word="Close" />}
    </div>
  );
}

function BarForm({ action, word }: { readonly action: FormAction; readonly word: string }) {
  return (
    <form action={action} method={typeof action === "string" ? "post" : undefined}>
      <Button type="submit">{word}</Button>
    </form>
  );
}
