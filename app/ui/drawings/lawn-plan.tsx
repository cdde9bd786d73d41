import { useId } from "react";
import { DrawingFigure } from "#ui/drawings/drawing-figure";
import { type PatternIds, Patterns, fillBy, patternIds } from "#ui/drawings/patterns";
import {
  type DrawnShape,
  type PlanArea,
  type PlanGround,
  type PlanLawn,
  type PlanLabelLayout,
  type PlanLayout,
  type PlanRoom,
  lawnLabel,
  lawnSizeWords,
  layOutPlan,
  planLinePixels,
  planRooms,
} from "./lawn-plan-layout";
import { type Point } from "./plane-geometry";
import styles from "./drawing.module.css";

export type { PlanArea, PlanLawn } from "./lawn-plan-layout";

export interface LawnPlanProps extends PlanGround {
  readonly title: string;
  /** "5,420 sq ft of lawn; 4,610 are treated." */
  readonly conclusion: string;
}

/** The lawns of a property to scale, north up, with all that is not treated. */
export function LawnPlan({ title, conclusion, lawns, areas }: LawnPlanProps) {
  const id = useId();
  const ground = { lawns, areas };
  return (
    <DrawingFigure
      title={title}
      conclusion={conclusion}
      wide={<PlanDrawing layout={layOutPlan(ground, planRooms.wide)} ids={patternIds(`${id}w`)} room={planRooms.wide} />}
      medium={
        <PlanDrawing layout={layOutPlan(ground, planRooms.medium)} ids={patternIds(`${id}m`)} room={planRooms.medium} />
      }
      narrow={
        <PlanDrawing layout={layOutPlan(ground, planRooms.narrow)} ids={patternIds(`${id}n`)} room={planRooms.narrow} />
      }
      table={planTable(lawns)}
    />
  );
}

function planTable(lawns: readonly PlanLawn[]) {
  const squareFeet = (size: number) => size.toLocaleString("en-US");
  return {
    columns: [
      { id: "lawn", head: "Lawn" },
      { id: "name", head: "Name" },
      { id: "size", head: "Size, sq ft", align: "figure" },
      { id: "off", head: "Taken off", align: "figure" },
      { id: "clear", head: "Kept clear", align: "figure" },
      { id: "treated", head: "Treated", align: "figure" },
      { id: "measured", head: "How and when measured" },
    ] as const,
    rows: lawns.map((lawn) => ({
      id: lawn.id,
      cells: {
        lawn: lawn.letter,
        name: lawn.name,
        size: squareFeet(lawn.sizeSquareFeet),
        off: squareFeet(lawn.takenOffSquareFeet),
        clear: squareFeet(lawn.keptClearSquareFeet),
        treated: squareFeet(lawn.treatedSquareFeet),
        measured: lawn.measured,
      },
    })),
  };
}

interface PlanDrawingProps {
  readonly layout: PlanLayout;
  readonly ids: PatternIds;
  readonly room: PlanRoom;
}

function PlanDrawing({ layout, ids, room }: PlanDrawingProps) {
  const height = layout.heightPixels + 64;
  // Lawns lie below everything: beds, drives and strips are cut out of them.
  return (
    <svg className={styles.fixed} width={layout.widthPixels} height={height} viewBox={`0 0 ${layout.widthPixels} ${height}`} aria-hidden="true">
      <Patterns ids={ids} />
      {layout.lawns.map((lawn) => (
        <polygon
          key={lawn.thing.id}
          className={styles.lawn}
          points={pointsOf(lawn.outline)}
          data-mark="lawn"
          data-square-feet={lawn.thing.sizeSquareFeet}
        />
      ))}
      {layout.morePieces.map((piece) => (
        <polygon key={pointsOf(piece)} className={styles.lawn} points={pointsOf(piece)} data-mark="lawn-piece" />
      ))}
      <KeptClear layout={layout} ids={ids} clipId={`${ids.water}-lawns`} />
      {layout.areas.map((area) => (
        <AreaShape key={area.thing.id} area={area} ids={ids} />
      ))}
      {layout.measuredLines.map(([from, to]) => (
        <line key={`${from.x},${from.y},${to.x},${to.y}`} className={styles.construction} x1={from.x} y1={from.y} x2={to.x} y2={to.y} />
      ))}
      {layout.sides.map(({ words, at, turnDegrees }) => (
        <text
          key={`${words},${at.x},${at.y}`}
          data-mark="side"
          transform={`translate(${round(at.x)} ${round(at.y)}) rotate(${round(turnDegrees)})`}
          textAnchor="middle"
          dominantBaseline="central"
        >
          {words}
        </text>
      ))}
      {layout.labels.map((label) => (
        <PlanLeader key={label.id} label={label} />
      ))}
      {layout.labels.map((label) => (
        <PlanLabel key={label.id} label={label} room={room} />
      ))}
      <PlanFoot layout={layout} room={room} y={layout.heightPixels + 12} />
    </svg>
  );
}

/** The ground within the lawns that lies nearer to water than is allowed: a line round the water, as wide as that. */
function KeptClear({ layout, ids, clipId }: { readonly layout: PlanLayout; readonly ids: PatternIds; readonly clipId: string }) {
  const waters = layout.areas.filter(({ thing }) => thing.kind === "water" && thing.keptClearFeet !== undefined);
  if (waters.length === 0) return null;
  return (
    <>
      <clipPath id={clipId}>
        {[...layout.lawns.map(({ outline }) => outline), ...layout.morePieces].map((outline) => (
          <polygon key={pointsOf(outline)} points={pointsOf(outline)} />
        ))}
      </clipPath>
      <g clipPath={`url(#${clipId})`}>
        {waters.map(({ thing, outline }) => {
          const line = { points: pointsOf(outline), fill: "none", strokeLinejoin: "round", strokeWidth: 2 * (thing.keptClearFeet ?? 0) * layout.pixelsPerFoot } as const;
          return (
            <g key={thing.id} data-mark="kept-clear-strip">
              <polygon {...line} className={styles.keptClearStrip} />
              <polygon {...line} stroke={fillBy(ids.water)} />
            </g>
          );
        })}
      </g>
      {[...layout.lawns.map(({ outline }) => outline), ...layout.morePieces].map((outline) => (
        <polygon key={pointsOf(outline)} className={styles.lawnEdge} points={pointsOf(outline)} />
      ))}
    </>
  );
}

function pointsOf(outline: readonly Point[]): string {
  return outline.map((point) => `${round(point.x)},${round(point.y)}`).join(" ");
}

function round(pixels: number): number {
  return Math.round(pixels * 100) / 100;
}

function AreaShape({ area, ids }: { readonly area: DrawnShape<PlanArea>; readonly ids: PatternIds }) {
  const points = pointsOf(area.outline);
  const data = { "data-mark": area.thing.kind };
  switch (area.thing.kind) {
    case "building":
      return <polygon className={styles.building} points={points} {...data} />;
    case "water":
      return <polygon className={styles.waterBody} points={points} {...data} />;
    case "kept-clear":
      return (
        <g {...data}>
          <polygon className={styles.keptClearGround} points={points} />
          <polygon className={styles.keptClearEdge} points={points} fill={fillBy(ids.water)} />
        </g>
      );
    case "bed":
    case "drive":
      return (
        <g {...data}>
          <polygon className={styles.excludedGround} points={points} />
          <polygon className={styles.excludedEdge} points={points} fill={fillBy(ids.hatch)} />
        </g>
      );
  }
}

function PlanLeader({ label }: { readonly label: PlanLabelLayout }) {
  const { leader } = label;
  if (leader === undefined) return null;
  return (
    <>
      <line className={styles.leader} x1={leader.from.x} y1={leader.from.y} x2={leader.to.x} y2={leader.to.y} />
      <circle className={styles.leaderDot} cx={leader.to.x} cy={leader.to.y} r="2.5" />
    </>
  );
}

interface PlanLabelProps {
  readonly label: PlanLabelLayout;
  readonly room: PlanRoom;
}

function PlanLabel({ label, room }: PlanLabelProps) {
  const { box, leader, lawn, area, nameLines } = label;
  const line = planLinePixels(room.textPixels);
  const radius = lawnLabel.discPixels / 2;
  const words = lawnLabel.discPixels + lawnLabel.gapPixels;
  // A building and a pond have the sheet's color, or nearly; grass carries its words without a plate.
  const plated = leader !== undefined || (area !== undefined && area.kind !== "building" && area.kind !== "water");
  return (
    <g>
      {plated && <rect className={styles.plate} {...box} />}
      {!plated && lawn !== undefined && <rect className={styles.grassPlate} {...box} />}
      {lawn !== undefined && (
        <>
          <circle className={styles.letterDisc} cx={box.x + radius} cy={box.y + radius + 2} r={radius} />
          <text className={styles.letter} x={box.x + radius} y={box.y + radius + 7} textAnchor="middle">
            {lawn.letter}
          </text>
          <text className={styles.size} x={box.x + words} y={box.y + room.sizeTextPixels}>
            {lawnSizeWords(lawn)}
          </text>
          {nameLines.map((name, index) => (
            <text key={name} x={box.x + words} y={box.y + room.sizeTextPixels + (index + 1) * line}>
              {name}
            </text>
          ))}
        </>
      )}
      {area !== undefined && (
        <>
          {nameLines.map((name, index) => (
            <text
              key={name}
              className={area.kind === "water" || area.kind === "kept-clear" ? styles.waterWord : undefined}
              x={box.x + 4}
              y={box.y + room.textPixels + index * line}
            >
              {name}
            </text>
          ))}
        </>
      )}
    </g>
  );
}

/** The scale bar of two blocks with the scale on paper below it, and north at the right end. */
function PlanFoot({ layout, room, y }: { readonly layout: PlanLayout; readonly room: PlanRoom; readonly y: number }) {
  const block = layout.barHalfFeet * layout.pixelsPerFoot;
  const line = room.textPixels + 5;
  const arrowX = layout.widthPixels - 16;
  return (
    <>
      <rect className={styles.solid} x="4" y={y} width={block} height="7" />
      <rect className={styles.frame} x={4 + block} y={y} width={block} height="7" />
      <rect className={styles.frame} x="4" y={y} width={block} height="7" />
      <text x="4" y={y + 8 + line}>
        0
      </text>
      <text x={4 + 2 * block} y={y + 8 + line} textAnchor="middle">{`${2 * layout.barHalfFeet} ft`}</text>
      <text className={styles.second} x="4" y={y + 8 + 2 * line}>
        {`1 inch on paper is ${layout.feetPerInch} ft`}
      </text>
      <text className={styles.strong} x={arrowX} y={y + 10} textAnchor="middle">
        N
      </text>
      <path className={styles.arrow} d={`M${arrowX} ${y + 46}V${y + 18}m-6 7 6-7 6 7`} />
    </>
  );
}
