package guide

import (
	"slices"
	"strings"
)

// Topic is one page.
type Topic struct {
	Name  string // one word, as it is asked for
	Title string
	Text  []string // paragraphs
}

// Topics are the pages in reading order: the steps first.
func Topics() []Topic {
	return []Topic{
		{"start", "the first minute", []string{
			"The bench opens on a demonstration; nothing of it is written before you give it a name. Up and down choose a row, left and " +
				"right the step, Enter opens or takes, + and - change, Backspace undoes without limit.",
			"Go right to Layers: the rows with A, B, C are lay-ups worth having; the section follows the cursor, Enter lays the branch " +
				"so. Right again for the sheath, and Build for the lay card and the cut list.",
			"Your own harness: contralay new FILE writes an empty one. Terminations, wires and branches are written in that file " +
				"(contralay help file); the bench does the rest, and adds wires like those that are there.",
			"W on any row says how its figures were made. H is this help; + and - turn its pages.",
		}},
		{"wires", "step 1, Wires", []string{
			"What runs through this branch. Over the list: how many things there are to lay, which connectors have cavities free, and " +
				"which wire is nearest its limit: Enter there lists them all, worst first.",
			"+ and - take the next size, digits set the current. Enter opens the wire: the reel first, since every diameter hangs on it: " +
				"lay ten side by side, divide by ten, type it. A calliper may send digits and Enter at once.",
			"In lists what this harness uses already stands first. One more like this takes the next number and the next free cavities; " +
				"a number there adds as many. All INJ1 again wires the connectors like it. A branch whose far ends are empty can be " +
				"wired as another one is.",
			"Under a wire stands all that bounds its current: each branch of its way by the public tables and by the heat of the bundle " +
				"as laid, and its contacts; the least decides. Point takes a wire out. Below the list: the sizes that do for all wires " +
				"at once, and the fuses.",
		}},
		{"protection", "current, duty, fuses", []string{
			"A wire may carry the least of what its way allows: each branch by the public tables and by the heat of the bundle as laid, " +
				"contacts, splices, its feed. A return without a current carries what names it.",
			"Duty is for a load that comes and goes: heat goes by the mean of the square, drop by the peak against drop_short_v; five " +
				"seconds on at a time is the most. A drop measured along a wire stands beside what the wire explains; the rest is in " +
				"crimps, contacts, splices, the ground point.",
			"A feed is a fuse or an electronic limit. It may be used to 80 % (feed_load_max), must not let more through for ever than " +
				"its wires may carry, must be sure to open on a short at the far end, and before the conductor is past its rating. A " +
				"blade carries 110 % for days. Of joined outputs each leg is sized for its own limit. short_a in [harness] is the " +
				"supply's dead short.",
			"Fuse for the wire, not for the load; as near to the supply as can be.",
		}},
		{"layers", "step 2, Layers", []string{
			"The lay-up, said aloud from the inside: 1 . 6 . 12. Each row is a layer: what it holds, where that leaves, how many the " +
				"layer takes, room for more or how many it is short, and over: what callipers read.",
			"+ moves one component further out, - further in: outward what leaves first, inward what runs furthest. Enter opens the " +
				"layer: there a component is pinned, the layer locked, its turn length and binder set. What is held stays, whatever is " +
				"tried.",
			"A, B, C are the lay-ups worth having, best first; = is the one in use. Lumpy is thick beside thin in a layer; buried is a " +
				"wire that leaves early and lies under one that runs on. Set aside keeps a lay-up in the file, to compare and to come " +
				"back to.",
			"Wishes say what they cost. LH: going away from you over the top the wire passes to the left.",
		}},
		{"fill", "step 3, Fill", []string{
			"A layer with room is not round yet, and a sealed harness cannot be changed later. What could fill each vacant place stands " +
				"here in this order: a spare with a free cavity at both ends, a ground or feed doubled, the next size up, another " +
				"centre, filler.",
			"Enter or + does it. Loose wires of one destination that would lie rounder made up are offered as a unit.",
			"Filler is white wire off the layer's own reel, or a size in stock (filler_stock_mm in [rules], with filler_c for what it " +
				"stands).",
		}},
		{"sheath", "step 4, Sheath", []string{
			"Three tubes, best first, and why. Slides: bore as supplied less the largest thing to pass; worst: every wire at its " +
				"largest. Grips: tape diameter over the bore it recovers to; 1.10 is wanted.",
			"No means it does not go on, loose that it does not end up tight. Enter takes the tube; kind tries another material in the " +
				"same place.",
			"Digits on a tube take its wall off the reel, Enter on a boot its sizes, in place of memory. Add puts a tape or braid under " +
				"the sheath, a sleeve or second sheath over it.",
			"Start and stop are along the branch from its first end; left alone it starts under the shortest boot and stops at the " +
				"sorted zone. Thread on lists, numbered, what must go on before the contacts, and what is glued last.",
			"Shrink in fresh air, away from fuel: the fumes of fluoropolymers harm. Ring out before any adhesive.",
		}},
		{"build", "step 5, Build", []string{
			"What to read before a wire is cut: what stops (!), what passes a limit (?), what is only to be known (-); then the lay card " +
				"of this branch, layer by layer from the centre, seen from its first end, and the cut list.",
			"The first row saves, the second (or P) writes the sheet: a page to print and lists for a spreadsheet, in a folder beside " +
				"the file. The file before stays beside it as .bak. Until you save, the work is in a journal, and offered at the next " +
				"start if something cuts the bench off.",
			"Point * marks a layer's tracer, which lies first.",
		}},
		{"run", "at the board", []string{
			"On step Build, or contralay run FILE: one instruction a screen, in letters read from across the board. Enter ticks it and " +
				"goes on, Backspace looks a step back and undoes nothing. All that is proposed is written down first, and is " +
				"not planned anew.",
			"After a layer type what callipers read, more than once if you like, or leave it. A reading is explained before anything " +
				"follows from it: the tolerance of its wire, else a crossed wire, tape, a wire that is missing. Nothing is moved; what " +
				"would help is offered.",
			"A hold is passed by a number or a name. Work that is cut off goes on at its step. What was measured teaches: contralay " +
				"learn FILE..., or measured and learned on step Build, shows bias and spread, and + there corrects this shop by it. " +
				"Deviations, contacts made anew, wire taken off a reel and a hand-over note have rows of their own; each serial keeps " +
				"its own, and the printed sheet shows them.",
		}},
		{"lists", "other people's wire lists", []string{
			"The menu takes in a wire list: CSV, TSV, Markdown, xlsx, ods, with whatever habits. It shows what it makes of it and what " +
				"each column means; + and - say it otherwise, and what was said is kept as a recipe for the next one. Nothing changes " +
				"before you take it.",
			"What is not understood stays as text in the note of its wire and in the report, with row and column. Lengths without a unit " +
				"are read only once you name one. Rows struck out and sheets that are hidden stay out, rows that are hidden do not; each " +
				"is told. A formula counts with the value saved beside it.",
			"A second list, made by somebody else, can be held against the harness: where the two join otherwise the sheet says stop, " +
				"and the ring-out sheet says what it was held against. contralay compare A B tells what changed between two, a swap once.",
		}},
		{"map", "the whole harness", []string{
			"Esc from a step shows the tree: each branch under the one it hangs on, with length, count, over, sheath, and the mark of " +
				"the worst that is wrong. Enter opens a branch, + hangs a leg on the breakout at its end, - splits it at a new one, " +
				"digits set its length.",
			"Where a change elsewhere leaves a lay-up that does not hold what runs there, nothing is moved: the map marks it, and Enter " +
				"on its first row takes those lay-ups away so that new ones are proposed.",
		}},
		{"ends", "terminations, splices, spares, lists", []string{
			"Terminations, from the map: each cavity and what it holds; + reserves a free one. How many wires two connectors still take, " +
				"and what one more does. An unwired cavity of a sealed connector takes contact and plug, in a firewall a stub of wire too.",
			"Splices: barrels, part, where the sleeve lies. Lists: wire by reel, longest first; contacts to buy with plugs, samples and " +
				"5 % more; strip, tool and pull; spares; units made first.",
			"A wire's page says which spare stands in for it, and what to re-pin. A spare with a cavity at one end only is dead-ended: " +
				"capped at a breakout or termination and folded back; the lists say where its cap lies.",
		}},
		{"more", "what only the file says", []string{
			"Keys that the bench shows and does not ask for, or asks for in one place only:",
			"termination: aliases = { \"A\" = [\"+\"] } gives cavities other names, firewall = true, tight = true where the wall must " +
				"be, space_mm what is free behind it, loop_mm its loop.",
			"wire: capped_at where a spare ends without a cavity, fold_mm how much of it is folded back. unit: strip_mm from its " +
				"shield's end to the contacts, drain_mm its lead.",
			"branch.cover: what (tape, braid, sheath, sleeve), part, from_mm, to_mm, thick_mm on each side. part: id and what was read " +
				"off one in hand: wall_mm of a tube; lip_, cable_recovered_mm and _supplied_mm, length_mm of a boot.",
			"rules: filler_of and filler_c the filler in stock, adhesive (epoxy, hot melt), adhesive_c, pot_life_min, pack_joints.",
		}},
		{"why", "how a figure was made", []string{
			"W on a row explains its figures and those of the strip below: the rule in words, the values it takes, where each comes " +
				"from, and what would change the figure most. + and - go through the figures, Enter on a value that was worked out goes " +
				"down to how that was made, Esc comes back.",
			"The last row of each step lists all its figures. A value is measured or given here, as published, common practice, or from " +
				"memory: ~ marks every figure that rests on memory. Measure it, or check the part's sheet.",
		}},
		{"marks", "the marks", []string{
			" >   the row in hand",
			" !   stop: cannot be built, or would burn, leak or come apart",
			" ?   warn: a limit is passed",
			" -   note: to be known",
			" =   the lay-up or tube in use",
			" *   tracer: the wire of a layer whose colour no other has; it lies first",
			" ~   rests on a value from memory",
			" [ ] the component in hand, in the section; ( ) its neighbours, o filler",
			" +   in the section: no room for that label; * looks closer",
		}},
		{"words", "the words", []string{
			" over      diameter over the high spots: what callipers read",
			" tape      circumference of a tight string round it, over pi",
			" LH, RH    away from you over the top to the left, to the right",
			" lay       length of one turn along the bundle",
			" takes     how many a layer takes; room, short: more, too many",
			" proud     how far a tight layer stands off what it lies on",
			" lay loss  wire length over bundle length, from the twist",
			" loop      stays in the boot; tail: cut off after pinning",
			" spare     a wire laid in for later, a cavity free at both ends",
			" dead end  a spare with a cavity at one end, capped at the other",
			" filler    what only keeps a layer round",
			" unit      wires made up first and laid as one",
			" zone      sorted and straight at a breakout; lay stops before",
		}},
		{"file", "the file", []string{
			"One TOML file is one harness, in mm, A, V, C and g whatever the screen shows. The least that loads:",
			" format = 1\n [[termination]]\n id = \"P1\"\n cavities = [\"1\", \"2\"]\n [[termination]]\n id = \"INJ1\"\n cavities = " +
				"[\"1\", \"2\"]\n [[wire]]\n id = \"101\"\n from = \"P1:1\"\n to = \"INJ1:1\"\n spec = \"AS22759/32\"\n size = \"22\"\n " +
				"[[branch]]\n id = \"T1\"\n from = \"P1\"\n to = \"INJ1\"\n length_mm = 450.0",
			"Branches make a tree between terminations and breakouts ([[breakout]] id). H more: keys for what is rare; " +
				"testdata/every-key.toml has them all.",
		}},
		{"recovery", "when something cuts the bench off", []string{
			"After each change the work goes to a journal in the user's state folder ($XDG_STATE_HOME, else ~/.local/state, under " +
				"contralay). The next start on the same file offers it and says what differs. Taking it up can be undone; leaving it " +
				"keeps it for the next start; only + on its own row throws it away.",
			"A save writes a new file, swaps it in and keeps the one before as .bak: the file is at every moment the old or the new one. " +
				"A file that somebody else wrote since it was read is not written over unless you say so.",
			"Where there can be no journal the head of the screen says so. If a killed program leaves the terminal odd: reset.",
		}},
		{"cautions", "the cautions", Cautions()},
	}
}

// Cautions stand at first start, in the help and in the README.
func Cautions() []string {
	return []string{
		"A planning aid, not an approval. Check against the makers' sheets, the technical regulations of the series and local codes; " +
			"leave to licensed practice what the law reserves to it.",
		"Outside what it rates: fuel-wetted parts, safety-critical circuits, anything above 60 V DC.",
		"Disconnect the battery. Work a heat gun in fresh air, away from fuel. Make and pull sample crimps. Ring out before any adhesive.",
	}
}

// Welcome is what the first screen says until the first key.
func Welcome() []string {
	return []string{
		"Arrows choose, Enter takes, + - change.",
		"Right: the lay-ups worth having, then sheaths.",
		"W says how a figure was made. H is help.",
	}
}

// Find is the topic of a name.
func Find(name string) (Topic, bool) {
	all := Topics()
	i := slices.IndexFunc(all, func(t Topic) bool { return t.Name == strings.ToLower(name) })
	if i < 0 {
		return Topic{}, false
	}
	return all[i], true
}

// Names are the names of all topics, in reading order.
func Names() []string {
	var out []string
	for _, t := range Topics() {
		out = append(out, t.Name)
	}
	return out
}

// Lines is a topic in lines of at most w characters.
func (t Topic) Lines(w int) []string {
	var out []string
	for k, p := range t.Text {
		if k > 0 && !strings.HasPrefix(p, " ") {
			out = append(out, "")
		}
		for _, l := range strings.Split(p, "\n") {
			if strings.HasPrefix(l, " ") {
				out = append(out, l)
				continue
			}
			line := ""
			for _, word := range strings.Fields(l) {
				if line != "" && len(line)+1+len(word) > w {
					out = append(out, line)
					line = ""
				}
				if line != "" {
					line += " "
				}
				line += word
			}
			out = append(out, line)
		}
	}
	return out
}
