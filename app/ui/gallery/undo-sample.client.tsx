"use client";

import { useState } from "react";
import { Button } from "#ui/button";
import { UndoBar } from "#ui/undo-bar";

/** A plan that changes, is taken back, and says so. */
export function UndoSample() {
  const [moved, setMoved] = useState(true);
  const [shown, setShown] = useState(true);
  function move() {
    setMoved(true);
    setShown(true);
  }
  return (
    <>
      <p>
        <strong>8 Hazel Ct 12:</strong> {moved ? <><del>11:37</del> <strong>8:52 on Thursday</strong></> : "11:37"}
      </p>
      {!moved && <Button onClick={move}>Move to Thursday</Button>}
      {shown && moved && (
        <UndoBar undo={() => setMoved(false)} dismiss={() => setShown(false)}>
          Moved to Thursday. Adds 9 min; fill A is short by 12 fl oz.
        </UndoBar>
      )}
    </>
  );
}
