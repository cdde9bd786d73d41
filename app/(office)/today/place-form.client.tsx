"use client";

import { type ReactNode, useActionState } from "react";
import { Button } from "#ui/button";
import { Finding } from "#ui/finding";
import { type Choice, SelectField } from "#ui/select-field";
import { Stack } from "#ui/stack";
import { UNSENT } from "../../form-state";
import { placeVisitAction } from "./action";
import styles from "./open-visits.module.css";

/** An open visit to put on a truck. */
export interface VisitToPlace {
  readonly visitId: string;
  readonly street: string;
  /** What stands in its row, drawn by the page. */
  readonly words: ReactNode;
}

interface PlaceFormProps {
  readonly visits: readonly VisitToPlace[];
  readonly trucks: readonly Choice[];
  /** Tells two of these on one page apart. */
  readonly idPrefix?: string;
}

/** The open visits with one choice of a truck for all of them and a button for each. */
export function PlaceForm({ visits, trucks, idPrefix = "" }: PlaceFormProps) {
  const [state, send, isPending] = useActionState(placeVisitAction, UNSENT);
  if (visits.length === 0) return null;
  return (
    <form action={send}>
      <Stack gap={4}>
        {trucks.length > 0 && <SelectField label="Put on" name="routeDayId" id={`${idPrefix}place-on`} choices={trucks} width="medium" />}
        {state.kind === "refused" && (
          <div role="alert">
            <Finding level="hold" what={state.sentence} source="house" />
          </div>
        )}
        <ul className={styles.list}>
          {visits.map(({ visitId, street, words }) => (
            <li key={visitId} className={styles.row}>
              <div className={styles.words}>{words}</div>
              {trucks.length > 0 && (
                <Button type="submit" name="visitId" value={visitId} aria-label={`Put ${street} on the truck`} aria-disabled={isPending}>
                  Put on a truck
                </Button>
              )}
            </li>
          ))}
        </ul>
      </Stack>
    </form>
  );
}
