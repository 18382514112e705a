### What is wrong with a level, a plan or a shared link, and what to do. Words in quotes or in English, like "atM" or flat,
### stand so in the files and stay as they are.

## Shapes: what stands in a file against what should stand there

# What stands there now; it begins a sentence. $found: as it is in the file, where $is is value.
found =
    { $is ->
        [nothing] Nothing
        [list] A list
        [object] An object
       *[value] { $found }
    }
# What should stand there.
needed =
    { $needed ->
        [number] a number
        [int] a whole number
        [string] text in quotes
        [boolean] true or false
        [array] a list in [ ]
        [object] an object in { "{ }" }
       *[other] something else
    }
schema-missing = This is missing. Add { needed }.
# $allowed: what may stand there, as one word or a list.
schema-missing-allowed =
    { $count ->
        [1] This is missing. Write { $allowed }.
       *[other] This is missing. Use one of: { $allowed }.
    }
schema-wrong-type = { found } stands where { needed } is needed.
schema-endless = This number is too big to be read. Write { needed }.
schema-not-allowed =
    { $count ->
        [1] { found } stands where { $allowed } is needed.
       *[other] { found } is not known here. Use one of: { $allowed }.
    }
schema-characters-most =
    { $most ->
        [one] This text may have at most { $most } character; it has { $has }.
       *[other] This text may have at most { $most } characters; it has { $has }.
    }
schema-characters-least =
    { $least ->
        [one] This text needs at least { $least } character; it has { $has }.
       *[other] This text needs at least { $least } characters; it has { $has }.
    }
schema-entries-most =
    { $most ->
        [one] This list may have at most { $most } entry; it has { $has }.
       *[other] This list may have at most { $most } entries; it has { $has }.
    }
schema-entries-least =
    { $least ->
        [one] This list needs at least { $least } entry; it has { $has }.
       *[other] This list needs at least { $least } entries; it has { $has }.
    }
# $found, $most, $least, $ratio and $percent: as numbers are written in the file.
schema-range-most = { $found } is out of range; it must be at most { $most }.
schema-range-least = { $found } is out of range; it must be at least { $least }.
# Behind the two before: people write gradients in percent.
slopes = Slopes are rise over run here: { $percent } % is written { $ratio }.
schema-bad-format = { found } does not fit. Use small letters, digits and dashes only, for example "two-pitches".
schema-invalid = { found } does not fit here. Compare with a bundled level.
schema-more =
    { $count ->
        [one] There is { $count } more problem. Mend these first.
       *[other] There are { $count } more problems. Mend these first.
    }
# $where: near a line, at the end, or unknown.
not-json =
    { $where ->
        [line] This is not readable as JSON; the fault is near line { $line }. Check commas, quotes and brackets.
        [end] This is not readable as JSON; it ends too early. Check commas, quotes and brackets.
       *[unknown] This is not readable as JSON. Check commas, quotes and brackets.
    }

## Levels. A stretch has wind, gravel or is hidden; a piece is a part of the road

level-too-big = This is far too long to be a level. Choose a file that was saved on the bench.
level-empty = This file is empty. A level file holds one object in braces { "{ … }" }.
level-not-a-level = A level file holds one object in braces { "{ … }" }.
level-too-deep = There is far more in this than any level has. Ask for it again, as a link or a file.
level-newer-schema = This level was made by a newer version (format { $schema }); this one reads up to { $readsUpTo }. Update the game; the file was left as it is.
level-unknown-key = "{ $key }" is not a part of a level here. Remove it or check its spelling.
level-unknown-cue = This cue needs "atM" and either a known "cue" or a "text" of up to 76 characters.
level-missing-kind = The kind of this piece is missing. Use flat, climb, pitch, descent, rollers, random-pitches or recorded.
level-unknown-kind = { found } is no kind of piece. Use flat, climb, pitch, descent, rollers, random-pitches or recorded.
level-no-weight = At least one mark needs a weight above 0.
level-too-short = The road is { $length } long; it needs at least { $least }. Lengthen a piece or add one.
level-too-long = The road is { $length } long; at most { $most } can be ridden. Shorten or remove pieces.
level-gentler-than-steepest = The gentlest pitch is steeper than the steepest. Swap the two numbers.
level-pitches-too-dense =
    { $pitchCount ->
        [one] { $pitchCount } pitch needs at least { $least } of road; this piece has { $length }.
       *[other] { $pitchCount } pitches need at least { $least } of road; this piece has { $length }.
    }
level-recorded-too-steep = Here the recorded road is steeper than { $limit }. Smooth the heights first.
level-backwards = This stretch ends before it begins. "toM" must be more than "fromM".
level-beyond-end =
    { $part ->
        [cue] This cue lies beyond the road, which is { $length } long.
       *[stretch] This stretch ends beyond the road, which is { $length } long.
    }
# $other: its place in the file, like winds[1].
level-overlap = This stretch overlaps with { $other }. Let one end where the other begins.
level-stop-too-near =
    { $near ->
        [beyond-end] The stop line at { $at } lies beyond the road, which is { $length } long.
        [end] The stop line at { $at } needs { $least } of road behind it; the road ends at { $length }.
        [start] The stop line at { $at } needs { $least } of road between it and the start.
       *[line] The stop line at { $at } needs { $least } of road between it and the stop line at { $last }.
    }

## Levels that may be ridden, but will surprise. $gear is like 34 × 34

level-cannot-climb = This rider has to walk from { $from } to { $to } (up to { $slope }), even in the easiest gear ({ $gear }): some { $walkS } s on foot.
# These two stand behind the one before. $metres: how far a turn of the pedals carries.
takes-gear = Riding it would take a gear of { $metres } a turn.
takes-power = No gear helps; riding it would take more than { $watts } W.
level-cannot-hold-cadence = This rider cannot hold { $heldRpm } rpm on the { $slope } at { $at } in the easiest gear ({ $gear }); { $cadenceRpm } rpm are left.
level-stop-uphill = The stop line at { $at } lies on { $slope } uphill: starting again there is a struggle.
level-stop-downhill = The stop line at { $at } lies on { $slope } downhill: nothing is learned from starting there.
level-hidden-long = The road stays hidden for { $length } with { $sight } of sight: that is riding blind, not looking ahead.
level-hidden-pitch = The { $steepest } pitch at { $foot } is seen only { $sight } before; nobody can shift in time.
level-seed-unused = Every ride of this level meets the same road, so it cannot show what was learned. Add rollers or random pitches.
# $seed: another seed of chance.
level-seed-moves-stop = With another seed ({ $seed }) this stop line comes to lie on { $slope }.

## Plans of group sessions

plan-too-big = This is far too long to be a plan. Ask the coach for it again.
plan-not-a-plan = A plan file holds one object in braces { "{ … }" }.
plan-too-deep = There is far more in this than any plan has. Ask the coach for it again.
plan-newer-schema = This plan was made by a newer version (format { $schema }); this one reads up to { $readsUpTo }. Update the game; the file was left as it is.
plan-unknown-key = "{ $key }" is not a part of a plan. Remove it or check its spelling.
plan-unknown-kind = A ride of a plan has the kind bundled, own or check.
plan-bad-format = Use small letters, digits and dashes only, for example "first-evening".
plan-invalid = This does not fit here. Compare with a ready plan.
plan-dirty-text = The title has invisible characters, or spaces at its ends. Type it again.
# $first: one or two words; $others: a list.
plan-unknown-bike = There is no such bike. Use { $first }, or one of: { $others }.
plan-unknown-rider = There is no such rider. Use { $first }, or one of: { $others }.
plan-unknown-level = There is no level "{ $levelId }" here. Choose another, or put the level itself in the plan.

## Shared links

link-too-big = The shared level is too big to be one.
link-not-packed = What was shared is no level. Share it again from the level bench.
link-not-shared = This is no shared level. Copy the whole link, from its first to its last letter.
link-newer-version = This level was shared by a newer version (format { $version }); this one reads up to { $readsUpTo }. Update the game.
link-damaged = The shared level is incomplete or was changed on its way. Copy the whole link again.
link-unknown-packing = The shared level is packed in a way that is not known here. Update the game.
