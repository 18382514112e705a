/** Every message and what is filled in, from the files in `assets/words/en`. Written by `npm run words`, not by hand. */
type Plain<Ids extends string> = Record<Ids, null>;
type Text = string | number;

export interface Messages {
  about: Plain<
    | 'title' | 'keys' | 'tryLevers' | 'playTitle' | 'play' | 'modelTitle' | 'model' | 'privacyTitle'
    | 'privacy' | 'careTitle' | 'care' | 'creditsTitle' | 'credits' | 'honest'
  >;
  arrival: Plain<
    | 'onItsWay' | 'stuck' | 'again' | 'safe' | 'noScript' | 'framed' | 'alone'
  >;
  cautions: Plain<
    | 'title' | 'outside' | 'short' | 'accept' | 'more' | 'all'
  >;
  common: Plain<
    | 'direction' | 'name' | 'promise' | 'nav-home' | 'nav-levels' | 'nav-children' | 'nav-bike'
    | 'nav-about' | 'nav-progress' | 'nav-gearcheck' | 'nav-settings' | 'nav-close' | 'nav-debrief'
    | 'nav-bench' | 'nav-road' | 'nav-two' | 'nav-clinic' | 'nav-join' | 'nav-collect' | 'nav-teach'
    | 'nav-skip' | 'coming-loading' | 'coming-failed' | 'coming-tryAgain' | 'health-not-fetched'
    | 'health-slow' | 'health-memory' | 'health-small-copy' | 'health-disk-full'
    | 'health-recordings-lost' | 'ladder-everyone' | 'ladder-children' | 'riding-loading'
    | 'riding-paused' | 'riding-on' | 'lesson-levers' | 'lesson-cadence' | 'lesson-easing'
    | 'lesson-look-ahead' | 'lesson-rolling' | 'lesson-chain-line' | 'lesson-ring-change'
    | 'lesson-ride-over' | 'lesson-hidden' | 'lesson-stop-gear' | 'lesson-wind-and-gravel'
    | 'lesson-everything' | 'lesson-check' | 'lesson-free' | 'bike-kids-20-1x7' | 'bike-kids-24-1x8'
    | 'bike-town-1x9' | 'bike-kids-20-hub-3' | 'bike-town-hub-3' | 'bike-town-hub-7'
    | 'bike-trekking-hub-8-crank' | 'bike-trekking-1x10-crank' | 'bike-town-hub-7-wheel'
    | 'bike-trekking-3x8' | 'bike-road-2x11' | 'bike-gravel-1x12' | 'bike-own' | 'rider-child-9'
    | 'rider-adult-new' | 'rider-adult-weekly' | 'rider-adult-strong' | 'rider-own' | 'key-rear-easier'
    | 'key-rear-harder' | 'key-front-smaller' | 'key-front-bigger' | 'key-ease' | 'key-press'
    | 'key-coast' | 'key-brake' | 'key-pause' | 'key-name-Space' | 'key-name-Escape' | 'key-name-Enter'
    | 'key-name-Tab' | 'key-spoken-ArrowUp' | 'key-spoken-ArrowDown' | 'key-spoken-ArrowLeft'
    | 'key-spoken-ArrowRight'
  > & {
    'profile': { steepest: Text };
    'bike-gears': { where: 'hub' | 'both' | 'sprockets'; rear: Text; rings: Text };
  };
  kept: Plain<
    | 'title' | 'save' | 'takeBack' | 'remove' | 'failed' | 'sureTitle' | 'keep' | 'saveFirst'
    | 'removeSure' | 'deleted' | 'notDeleted' | 'savedPart' | 'notAFile' | 'tooBigFile' | 'takingBack'
    | 'stopTaking' | 'newerFile' | 'changedFile' | 'changedTitle' | 'changedSure' | 'changedLeave'
    | 'changedTake' | 'lookAtStore'
  > & {
    'count': { rides: number };
    'sure': { rides: number };
    'savedAll': { rides: number };
    'stopped': { added: Text };
    'namesStore': { host: Text };
    'takenBack': { added: Text; already: Text };
    'refused': { refused: Text };
  };
  ride: Plain<
    | 'failed-not-fetched' | 'failed-no-canvas' | 'failed-broken' | 'again' | 'pausedHint' | 'restart'
    | 'leave' | 'stage' | 'hands' | 'controls' | 'watching' | 'backToDebrief' | 'steeper' | 'gentler'
    | 'step-rear-easier' | 'step-rear-harder' | 'step-ease' | 'done-rear-harder' | 'wrong-rear-easier'
    | 'wrong-rear-harder' | 'wrong-front-smaller' | 'wrong-front-bigger' | 'wrong-ease' | 'wrong-press'
    | 'wrong-coast' | 'wrong-brake' | 'wrong-pause' | 'instead' | 'hold' | 'pad' | 'holdPad' | 'skip'
    | 'trouble-ride-title' | 'trouble-ride' | 'trouble-again' | 'trouble-watching' | 'trouble-kept'
    | 'trouble-notKept' | 'trouble-goOn' | 'trouble-keep' | 'trouble-back' | 'trouble-page'
    | 'trouble-report' | 'trouble-reportHint' | 'trouble-reload' | 'trouble-close'
  > & {
    'title': { level: Text };
    'done-rear-easier': { gears: 'hub' | 'sprockets' };
    'done-ease': { gears: 'hub' | 'sprockets' };
    'say-rear-easier': { key: Text };
    'say-rear-harder': { key: Text };
    'say-ease': { how: 'hold' | 'press'; key: Text };
  };
  settings: Plain<
    | 'title' | 'labels-theme' | 'labels-motion' | 'labels-beside' | 'labels-units' | 'labels-muted'
    | 'labels-music' | 'labels-paceRatio' | 'labels-autoEase' | 'labels-holdMode' | 'labels-leversKnown'
    | 'labels-childNumbers' | 'labels-childVoice' | 'labels-pads' | 'labels-byEar' | 'labels-oneHand'
    | 'labels-scanning' | 'options-theme-indoor' | 'options-theme-field' | 'options-motion-system'
    | 'options-motion-reduced' | 'options-motion-full' | 'options-beside-both' | 'options-beside-best'
    | 'options-beside-last' | 'options-beside-nobody' | 'options-music-auto' | 'options-music-on'
    | 'options-music-off' | 'options-units-metric' | 'options-units-imperial' | 'options-holdMode-hold'
    | 'options-holdMode-switch' | 'options-pads-auto' | 'options-pads-always' | 'options-pads-never'
    | 'look' | 'sound' | 'volumes-machine' | 'volumes-road' | 'volumes-cues' | 'ride' | 'help'
    | 'helpHint' | 'aids-roadAhead' | 'aids-nextStep' | 'aids-cues' | 'aids-pressureHint'
    | 'aids-chainView' | 'aids-clickTrack' | 'aids-liveMarks' | 'ways' | 'keysFor-left'
    | 'keysFor-right' | 'pad-title' | 'pad-hint' | 'pad-push' | 'keys' | 'keysHint' | 'pushKey'
    | 'labels-hand' | 'options-hand-left' | 'options-hand-right' | 'labels-scanS' | 'language'
    | 'language-device' | 'untranslated' | 'notFetched'
  > & {
    'labels-widerBand': { turns: Text };
    'seconds': { seconds: Text };
    'pad-button': { number: Text };
    'changeKey': { action: Text; key: Text };
  };
  start: Plain<
    | 'ride' | 'rideAgain' | 'byEar' | 'byEye' | 'picture' | 'newer' | 'loadNewer' | 'hint-children'
    | 'levels' | 'bike' | 'hint-about' | 'hint-progress' | 'hint-gearcheck' | 'hint-two' | 'hint-clinic'
    | 'hint-teach' | 'hint-bench' | 'unfinished-goOn' | 'unfinished-olderLegs' | 'unfinished-keep'
    | 'unfinished-letGo' | 'unfinished-kept' | 'unfinished-notKept'
  > & {
    'hint-levels': { done: Text; all: Text };
    'hint-bike': { name: Text; gears: Text };
    'unfinished-title': { level: Text };
    'unfinished-turn': { level: Text };
    'unfinished-length': { minutes: number; seconds: number };
  };
}
