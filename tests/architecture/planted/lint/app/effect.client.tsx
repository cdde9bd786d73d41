// caught by: react-hooks/rules-of-hooks x2, react-hooks/exhaustive-deps
"use client";
import { useEffect, useState } from "react";

export function Effect({ isOpen, name }: { readonly isOpen: boolean; readonly name: string }) {
  if (isOpen) return null;
  const [shown, show] = useState("");
  useEffect(() => {
    document.title = name;
  }, []);
  return <button type="button" onClick={() => { show(name); }}>{shown}</button>;
}
