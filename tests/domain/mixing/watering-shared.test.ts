import { expect, test } from "vitest";
import { alsoWatersSentence, alsoWetsSentence } from "#domain/mixing/watering-shared";

test("a station that waters other lawns is named with them, and runs once where they all want water", () => {
  expect(alsoWatersSentence({ stationName: "1 Front", lawnNames: ["Strip"] })).toBe("1 Front waters Strip as well; run it once for both.");
  expect(alsoWatersSentence({ stationName: "1 Front", lawnNames: ["Strip", "Yard"] })).toBe("1 Front waters Strip and Yard as well; run it once for all.");
  expect(alsoWetsSentence({ stationName: "1 Front", lawnNames: ["Strip", "Yard"] })).toBe("1 Front waters Strip and Yard as well.");
});
