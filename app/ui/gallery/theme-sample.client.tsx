"use client";

import { useState } from "react";
import { ThemeSwitch, deskThemes, truckThemes } from "#ui/theme-switch";

type Choice = "light" | "dark" | "system" | "sun";

/** Both theme switches on this page alone: nothing is stored, the page just changes. */
export function ThemeSample() {
  const [chosen, setChosen] = useState<Choice>("system");
  function choose(form: FormData) {
    const theme = form.get("theme") as Choice;
    setChosen(theme);
    if (theme === "system") delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = theme;
  }
  return (
    <>
      <ThemeSwitch options={deskThemes} chosen={chosen === "sun" ? "system" : chosen} action={choose} />
      <ThemeSwitch options={truckThemes} chosen={chosen === "dark" ? "dark" : "sun"} action={choose} />
    </>
  );
}
