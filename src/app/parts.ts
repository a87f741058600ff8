import { othersOf } from './alternatives.ts';
import { Bar } from './bar/Bar.tsx';
import { Compare } from './compare/Compare.tsx';
import { Broken } from './crash/Broken.tsx';
import { Drawer } from './drawer/Drawer.tsx';
import { Opener } from './drawer/Opener.tsx';
import { HowDialog } from './figures/HowDialog.tsx';
import { Findings } from './findings/Findings.tsx';
import { Summary } from './findings/Summary.tsx';
import { InSight } from './InSight.tsx';
import { Keys } from './Keys.tsx';
import { Notices } from './Notices.tsx';
import { Help } from './numbers/Help.tsx';
import { Numbers } from './numbers/Numbers.tsx';
import { Strings } from './numbers/Strings.tsx';
import { Outcome } from './outcome/Outcome.tsx';
import { SetUp } from './setup/SetUp.tsx';
import { Alternatives } from './sheet/Alternatives.tsx';
import { Hands } from './sheet/Hands.tsx';
import { Looking } from './sheet/Looking.tsx';
import { Problems } from './sheet/Problems.tsx';
import { Refused } from './sheet/Refused.tsx';
import { Told } from './sheet/Told.tsx';
import { CardDialog } from './sheet/tools/CardDialog.tsx';
import { ToolOver } from './sheet/tools/ToolOver.tsx';
import { ToolPanel } from './sheet/tools/ToolPanel.tsx';
import { TrueSize } from './sheet/tools/TrueSize.tsx';
import { TypedField } from './sheet/typed/TypedField.tsx';
import { heads } from './skips/heads.ts';
import { SkipOn } from './skips/SkipOn.tsx';
import { Skips } from './skips/Skips.tsx';
import { tellPicture } from './swift/hand.ts';

/** All of the page that the first drawing does without. */
export const parts = {
  Alternatives,
  Bar,
  Broken,
  CardDialog,
  Compare,
  Drawer,
  Findings,
  Hands,
  Help,
  HowDialog,
  InSight,
  Keys,
  Looking,
  Notices,
  Numbers,
  Opener,
  Outcome,
  Problems,
  Refused,
  SetUp,
  SkipOn,
  Skips,
  Strings,
  Summary,
  ToolOver,
  ToolPanel,
  TrueSize,
  Told,
  TypedField,
  heads,
  othersOf,
  tellPicture,
};
