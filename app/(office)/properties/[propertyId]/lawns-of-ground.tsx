import { evennessWords } from "#domain/equipment/station-test";
import { type PropertyOnFile } from "#application/properties/read-property";
import { squareFeetWords } from "#domain/properties/area-words";
import { formatShortDate } from "#domain/foundation/calendar-date";
import { controllerWords, townRuleWords } from "#domain/properties/watering-fact";
import { LinkButton } from "#ui/button";
import { KeyValueList } from "#ui/key-value-list";
import { Row } from "#ui/row";
import { Stack } from "#ui/stack";
import { Table } from "#ui/table";
import { PressForm } from "../../../action-form.client";
import { VisitFinding } from "../../visits/visit-finding";
import { sayNoWaterAction } from "./action";
import { grassWords, lawnWaterWords, originWords, rateWords } from "./ground-words";

interface Props {
  readonly property: PropertyOnFile;
  readonly mayChange: boolean;
}

/** All lawns of the property; a row leads to the page narrowed to its lawn. */
export function LawnsOfGround({ property, mayChange }: Props) {
  const { lawns, propertyId } = property;
  return (
    <Stack gap={4}>
      {lawns.length > 0 && (
      <Table
        caption="Lawns"
        columns={[
          { id: "lawn", head: "Lawn" },
          { id: "size", head: "Size", align: "figure" },
          { id: "grass", head: "Grass" },
          { id: "measured", head: "How it is known" },
          { id: "water", head: "Water, soil" },
        ]}
        rows={lawns.map((lawn) => ({
          id: lawn.zoneId,
          href: `/properties/${propertyId}?lawn=${lawn.zoneId}`,
          cells: {
            lawn: `${lawn.letter} ${lawn.name}`,
            size: squareFeetWords(lawn.area),
            grass: grassWords(lawn),
            measured: originWords(lawn),
            water: [
              ...lawnWaterWords(lawn),
              ...lawn.soilTests.slice(0, 1).map(({ sampledOn, phosphorusWord }) => `phosphorus “${phosphorusWord}”, ${formatShortDate(sampledOn)}`),
            ].join("; "),
          },
        }))}
      />
      )}
      {mayChange && (
        <Row>
          <LinkButton href={`/properties/${propertyId}/measure-lawn?shape=rectangle`}>Measure a lawn</LinkButton>
          {lawns.some(({ waterBeside }) => waterBeside === "not-known") && (
            <PressForm action={sayNoWaterAction} fixed={{ propertyId }} whilePending="Writing it down">
              Somebody looked: no water beside them
            </PressForm>
          )}
        </Row>
      )}
    </Stack>
  );
}

/** The irrigation stations with their rates, and when water may run. */
export function StationsOfGround({ property, mayChange, zoneId }: Props & { readonly zoneId?: string | undefined }) {
  const { lawns, propertyId } = property;
  const stations = property.stations.filter((station) => zoneId === undefined || station.zoneIds.includes(zoneId));
  const letters = (ids: readonly string[]) => lawns.filter((lawn) => ids.includes(lawn.zoneId)).map(({ letter, name }) => `${letter} ${name}`);
  return (
    <Stack gap={4}>
      {stations.length === 0 ? (
        <p>No station is on file: without one there are no minutes to set, only a depth of water.</p>
      ) : (
      <Table
        caption="Irrigation stations"
        columns={[
          { id: "station", head: "Station" },
          { id: "rate", head: "Puts down", align: "figure" },
          { id: "evenness", head: "Evenness" },
          { id: "waters", head: "Waters" },
          { id: "tested", head: "Tested" },
        ]}
        rows={stations.map((station) => ({
          id: station.stationId,
          ...(mayChange ? { href: `/properties/${propertyId}/stations/${station.stationId}/change-station` } : {}),
          cells: {
            station: `${String(station.number)} ${station.name}`,
            rate: rateWords(station),
            evenness: station.evenness === null ? "" : evennessWords(station.evenness),
            waters: letters(station.zoneIds).join(", "),
            tested: station.test === null ? "Without a catch-can test there are no minutes" : formatShortDate(station.test.testedOn),
          },
        }))}
      />
      )}
      {stations.flatMap(({ stationId, evenness }) =>
        (evenness?.findings ?? []).map((finding) => <VisitFinding key={`${stationId} ${finding.rule}`} finding={finding} />),
      )}
      <KeyValueList
        pairs={[
          { key: "Town’s watering rule", value: townRuleWords(property.townRule, property.street) },
          { key: "Controller", value: controllerWords(property.controller, property.street) },
        ]}
      />
      {mayChange && (
        <Row>
          <LinkButton href={`/properties/${propertyId}/add-station`}>Add a station</LinkButton>
        </Row>
      )}
    </Stack>
  );
}
