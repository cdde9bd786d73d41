import { describe, test } from "vitest";
import { published } from "../support/published-check";
import { SPRAY_WEATHER_CHECKS } from "./checks/spray-weather-checks";

describe("published spray weather", () => {
  test.each(published(SPRAY_WEATHER_CHECKS))("$title", ({ run }) => run());
});
