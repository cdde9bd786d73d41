import { Button } from "#ui/button";
import { DemonstrationNotice } from "#ui/demonstration-notice";
import { DrawingPart } from "#ui/gallery/drawing-part";
import { FindingPart, StatePart } from "#ui/gallery/finding-part";
import { FormPart } from "#ui/gallery/form-part";
import { ActsPart, WordsPart } from "#ui/gallery/frame-part";
import { TablePart } from "#ui/gallery/table-part";
import { PageFrame } from "#ui/page-frame";
import { PageHead } from "#ui/page-head";
import { JumpLinks } from "#ui/section";
import { TopBar } from "#ui/top-bar";

const places = ["Today", "Weeks", "Properties", "Programs", "Shed", "Crew", "Register", "Money"].map((name) => ({
  name,
  href: `#${name.toLowerCase()}`,
}));

const sections = [
  { id: "words", name: "Words and figures" },
  { id: "acts", name: "Things to press" },
  { id: "findings", name: "Findings and marks" },
  { id: "forms", name: "Fields" },
  { id: "drawings", name: "Drawings" },
  { id: "states", name: "States" },
  { id: "tables", name: "Tables" },
] as const;

/**
 * Every component in every state on one page, with invented data: to look at in all themes and widths, and for the
 * tests that do. A whole page; mount it where no other frame surrounds it.
 */
export function Gallery() {
  return (
    <PageFrame
      bar={
        <TopBar
          brand="Halfpass"
          homeHref="#today"
          places={places}
          currentHref="#today"
          contentsHref="#contents"
          ends={
            <>
              <a href="#search">Search</a>
              <a href="#help">Help</a>
            </>
          }
        />
      }
      notice={<DemonstrationNotice>Every name, place and product on this page is invented.</DemonstrationNotice>}
    >
      <PageHead
        title="The look of things"
        sentence={
          <>
            3 trucks, 27 stops. <strong>2 can’t go as planned.</strong> 4 papers are not printed yet.
          </>
        }
        actions={
          <>
            <Button>Undo</Button>
            <Button>Drawing</Button>
            <Button>Fit again</Button>
            <Button kind="act">Print the packet</Button>
          </>
        }
      />
      <JumpLinks sections={sections} />
      <WordsPart />
      <ActsPart />
      <FindingPart />
      <FormPart />
      <DrawingPart />
      <StatePart />
      <TablePart />
    </PageFrame>
  );
}
