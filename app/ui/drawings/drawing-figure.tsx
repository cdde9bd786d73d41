import { type ReactNode } from "react";
import { Disclosure } from "#ui/disclosure";
import { Table, type TableColumn, type TableRow } from "#ui/table";
import styles from "./drawing.module.css";

/** A line below a drawing for words that had no room in it; the drawing carries its number. */
export interface DrawingNote {
  readonly number: number;
  readonly words: string;
}

export interface DrawingFigureProps {
  /** What the drawing is of: "Spraying hours, Tuesday". */
  readonly title: string;
  /** What follows from it, as a sentence. */
  readonly conclusion: ReactNode;
  /** The form for 640 px and more. */
  readonly wide: ReactNode;
  /** The form for 448 px and more, where one is worth the while. */
  readonly medium?: ReactNode;
  /** The form for less. */
  readonly narrow: ReactNode;
  readonly wideNotes?: readonly DrawingNote[];
  readonly narrowNotes?: readonly DrawingNote[];
  /** The twin of the drawing: the same array as a table. */
  readonly table: { readonly columns: readonly [TableColumn, ...TableColumn[]]; readonly rows: readonly TableRow[] };
}

/**
 * A drawing with its conclusion as the caption and its twin table. The drawing itself is hidden from those who
 * listen: the caption and the table say all of it. Whatever can be pressed stands in the table.
 */
export function DrawingFigure(props: DrawingFigureProps) {
  const { title, conclusion, wide, medium, narrow, wideNotes = [], narrowNotes = [], table } = props;
  return (
    <figure className={styles.figure}>
      <figcaption className={styles.caption}>
        <span className={styles.title}>{title}</span>
        <span>{conclusion}</span>
      </figcaption>
      <div className={styles.wide}>
        {wide}
        <Notes notes={wideNotes} />
      </div>
      {medium !== undefined && <div className={styles.medium}>{medium}</div>}
      <div className={styles.narrow} data-beside-medium={medium !== undefined || undefined}>
        {narrow}
        <Notes notes={narrowNotes} />
      </div>
      <Disclosure name="Read as a table">
        <Table caption={title} captionSpoken columns={table.columns} rows={table.rows} dense />
      </Disclosure>
    </figure>
  );
}

function Notes({ notes }: { readonly notes: readonly DrawingNote[] }) {
  if (notes.length === 0) return null;
  return (
    <ol className={styles.notes} aria-hidden="true">
      {notes.map((note) => (
        <li key={note.number}>
          <span className={styles.noteNumber}>{note.number}</span>
          <span>{note.words}</span>
        </li>
      ))}
    </ol>
  );
}

/** The number of a note within a drawing, in a disc of 18 px around the middle. */
export function NoteDisc({ number, x, y }: { readonly number: number; readonly x: string | number; readonly y: number }) {
  return (
    <svg x={x} y={y} overflow="visible">
      <circle className={styles.noteDisc} r="9" />
      <text className={styles.noteDiscNumber} y="4.5" textAnchor="middle">
        {number}
      </text>
    </svg>
  );
}
