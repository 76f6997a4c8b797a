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
func Topics() []Topic { return topics }

// topics is never written to.
var topics = []Topic{
	{"start", "the first minute", []string{
		"The bench opens on a demonstration. Nothing is saved until you give it a file name. Up and down choose a row. Left and right go " +
			"from step to step. Enter opens a row or takes what it offers, + and - change it, Backspace undoes without limit.",
		"Go right to Layers. Rows A, B, C are lay-ups worth having. The section follows the row you are on; Enter lays the branch that " +
			"way. Go right again for the sheath, and once more for Build: the lay card and the cut list.",
		"For your own harness, contralay new FILE writes an empty board and contralay FILE opens it: begin with a connector or a device. " +
			"contralay import LIST -o FILE starts from a wire list.",
		"W on any row shows how its figures were made. H opens this help; + and - turn its pages.",
	}},
	{"wires", "step 1, Wires", []string{
		"This step lists the wires that run through the branch. The lines above it count the pieces to lay and the " +
			"free cavities. The first row names the wire nearest its limit; Enter lists all wires, worst first. The next one changes " +
			"several wires at " +
			"once.",
		"+ and - take the next size. Digits set the current. Enter opens the wire. Measure the reel first, because every diameter " +
			"depends on it: lay ten wires side by side, divide by ten, type the result. A calliper may send digits and Enter at once.",
		"Lists start with what this harness already uses. \"One more like this\" takes the next number and free cavities; type a number " +
			"there to add several.",
		"A wire's page lists every limit on its current: the public tables and the heat of the bundle on each branch, and both " +
			"contacts. The lowest one counts. Press . to remove the wire. Rows below the list show the sizes that would satisfy all " +
			"wires, and the fuses.",
	}},
	{"several", "several wires at once", []string{
		"\"Change several wires\" is a row on the step Wires and on the page of a connector. Enter marks a wire, + marks all like it. " +
			"The first row marks by size, role, far end, or all. The right arrow goes on to what you can do with the marked wires. One " +
			"Backspace takes back each change whole.",
		"A wire that its contact or seal would not take in a size stays as it was, and the bench names it. A unit is two to four wires " +
			"that run the same way. A splice joins wires that end at one connector, with one wire on for the sum of their currents.",
		"Colours are proposed so that no connector has two wires alike and every layer has a tracer. Propose them when the branches are " +
			"laid. They come from colour_stock in [rules]. A colour that you gave stays, unless you ask for new ones. If the stock is " +
			"too small, the bench says where.",
		"On the page of a connector, Enter on a free cavity makes wires from there: how many, where to, what size.",
	}},
	{"protection", "current, duty, fuses", []string{
		"A wire may carry the lowest of its limits: each branch by the public tables and by the heat of the bundle as laid, the " +
			"wire alone in the same air, its contacts, its splices, its fuse. A return wire without a current of its own carries what " +
			"comes back through it.",
		"Duty is for a load that switches on and off. Heating uses the RMS current, voltage drop the peak. A load may be on for five " +
			"seconds at a time at most. Type a drop that you measured along a wire: what the wire does not explain is lost in crimps, " +
			"contacts, splices or the ground point.",
		"A feed is a fuse or an electronic limit. Load it to 80 % at most (feed_load_max). It must not pass more than its wires may " +
			"carry all day, and must open on a short at the far end before the conductor passes its rating. A blade fuse carries 110 % " +
			"for days. short_a in [harness] is what the supply drives into a dead short.",
		"Fuse for the wire, not for the load, as near to the supply as you can.",
	}},
	{"layers", "step 2, Layers", []string{
		"The lay-up is read from the inside out: 1 . 6 . 12. Each row is a layer: its pieces, how many it holds of how many it can " +
			"hold, and its OD (what callipers read).",
		"+ moves one piece a layer out, - a layer in. What leaves first goes out, what runs furthest stays in. Enter opens the layer: " +
			"pin a piece there, lock the layer, set its lay length or a binder. Nothing moves what you have pinned or locked.",
		"What if: A, B, C are lay-ups worth having, = is in use; what a longer search finds comes last. Then a row a kind of change; " +
			"+ - step it. + behind a figure: better than now, - worse. Enter, or a row's number and Enter, shows all values: Enter " +
			"takes one, + keeps it. \"One more wire\": what still fits.",
		"Buried: a wire that leaves early lies under one that runs on. Lumpy: thick wires beside thin ones. LH: going away over the " +
			"top, the wire passes to the left.",
	}},
	{"fill", "step 3, Fill", []string{
		"A layer with room is not round yet, and a sealed harness cannot be changed later. For each free place this step offers, in " +
			"this order: a spare with a free cavity at both ends, a second ground or feed, the next size up, another centre, filler.",
		"Enter or + takes the offer. Loose wires that go to the same place and would lie rounder as one unit are offered as a unit.",
		"Filler is white wire of the layer's own size, or a size that you stock: filler_stock_mm in [rules], with filler_c for the " +
			"temperature it withstands.",
	}},
	{"sheath", "step 4, Sheath", []string{
		"The step lists tubes, best first, and says why. \"Slides\" is the supplied bore less the largest thing it must pass; \"worst\" " +
			"is the same with every wire at its largest. \"Grips\" is the tape diameter over the recovered bore; 1.10 is wanted.",
		"No: the tube does not go on. Loose: it does not end up tight. Enter takes the tube. The row \"kind\" tries another material. " +
			"Type a tube's wall off the reel, or open a boot and type its sizes: they replace values from memory.",
		"Start and stop are measured from the branch's first end. If you set neither, the sheath starts under the shortest boot and " +
			"stops " +
			"at the sorted zone. \"Add\" puts a tape or braid under the sheath, a sleeve or second sheath over it. \"Thread on\" lists " +
			"what must go on before the contacts.",
		"Shrink in fresh air, away from fuel: the fumes of fluoropolymers harm you. Ring out before any adhesive.",
	}},
	{"build", "step 5, Build", []string{
		"Read this step before you cut a wire. It lists the open points: stop (!), limit passed (?), worth knowing (-). Below them is " +
			"the lay card of this branch, layer by layer from the centre, seen from its first end, and the cut list.",
		"The first row saves. The second row, or P, writes the sheet into a folder beside the file: a page to print and lists for a " +
			"spreadsheet. The file as it was before stays beside it as .bak. Until you save, your work is kept in a journal, and the " +
			"next start offers it if something cut the bench off.",
		"A star marks the tracer of a layer, which lies first.",
	}},
	{"run", "at the board", []string{
		"Open it from the step Build, or with contralay run FILE. It shows one thing a screen: a wire to cut, to lay, to pin. " +
			"Enter ticks it, + all that goes with it (a spool, a layer, a connector, an end), Backspace looks back and undoes nothing. " +
			"It first writes down proposed lay-ups: nothing is planned again while you build.",
		"After a layer, type what the callipers read, or leave it. The bench explains a reading and moves nothing. " +
			"53 for 5.3 is never taken: measure again.",
		"The file keeps what was done. If the sheet has changed since, the run asks first: do it again, or keep it as it was built, " +
			"with a name. The end of the run lists every open point.",
		"A run that was cut off goes on at its piece. Deviations, contacts made again, wire used " +
			"and a note have rows, and the printed sheet shows them. Readings teach: \"measured\" on the step Build, or " +
			"contralay measured FILE..., corrects this shop. A serial keeps the figures it was begun with.",
	}},
	{"signing", "who builds, who inspects", []string{
		"The run asks once who works: a number or a name, from the shop's list where it has one ([[person]] id, name, may_inspect in " +
			"the shop's catalogue). Each tick carries that name, the day and the time. \"Who works\" changes it.",
		"A hold is signed by somebody else than those who built, and by the shop's list only by one who may inspect. One who works " +
			"alone takes the row that says so: it is written down as a concession, and the sheet prints it.",
		"\"All steps\" lists what is done, by whom and when. + and - show what is open, what is ticked, or one kind. Enter goes to a " +
			"step, digits go to it by number. Press . to take a step back: choose the reason or type it. What was done stays on record.",
	}},
	{"tests", "lots, samples and tests in the run", []string{
		"The label of a reel is typed before the first wire comes off it; a spool may have a lot of its own. Three samples of each " +
			"crimp are pulled before the first contact: type the force, or Enter where it held the least.",
		"Each net is rung out once, bare and with its contacts in: Enter passes it, digits are the ohms. Isolation and the loaded drop " +
			"are readings. \"Instrument\" says what they are read on, from the shop's list ([[instrument]] id, what, serial, due).",
		"What is out of its limit is a hold of its own. Mend it and test again: the last test counts, the first stays on record. Or " +
			"somebody with a name decides that it stays: that is a deviation. The run is not done before.",
		"A run that was begun by an older contralay is not asked for these.",
	}},
	{"lists", "other people's wire lists", []string{
		"The menu takes in a wire list: CSV, TSV, Markdown, xlsx or ods. The screen shows what the bench makes of it. + reads a table as " +
			"the next best, . leaves a table or a sheet out. Enter opens a table. There Enter on a column lists the meanings, Enter on a " +
			"row makes it the headings, . leaves it out. A recipe keeps it all for the next list. Nothing changes until you take it.",
		"What the bench does not understand stays as text in the note of its wire, and the report names row and column. Lengths without " +
			"a unit are read only after you name one. Rows struck out and hidden sheets are left out, hidden rows are kept; the report " +
			"names each. A formula counts with the value that was saved beside it.",
		"A second list, made by somebody else, can be checked against the harness. Where the two join differently the sheet says stop. " +
			"contralay compare A B lists what changed between two lists or files, a swap once. Its last line says what was " +
			"matched and what was not compared.",
	}},
	{"map", "the whole harness", []string{
		"Esc from a step shows the tree: each branch under the breakout it hangs on, with its worst open point marked. Enter " +
			"opens it. Digits set its length and go on to the next. + adds devices and more at its end.",
		"- opens what can be changed of a branch or a place: where it hangs, split, join, turn round, name, id, how it is closed. " +
			"A new id goes everywhere; only the record of a build keeps the old one.",
		". removes a branch with all that hangs on it, or a place. Backspace brings it back.",
		"The first rows say what is missing, worst first: ! it cannot be built without, ? something is not judged without, - only " +
			"the sheet lacks it. Enter goes to where it is given. A length of 0 is not measured yet.",
		"A lay-up that no longer matches its wires is marked and never moved. Enter on that row has new ones proposed.",
	}},
	{"add", "from an empty board", []string{
		"An empty board asks for a first connector, a device or a wire list. Type the number of cavities to see the arrangements " +
			"that have so many. + on the connector runs its trunk to a first breakout: type the length.",
		"+ on a branch adds at the breakout at its end: devices, a connector on a leg, a branch further on, a bare leg, spare wires, or " +
			"the proposed sheaths and boots. In a numbered list, a number and Enter take a row.",
		"A kind of device brings its cavities, what each carries, a wire size to begin with and a name. Say how many, then type the " +
			"length of each leg, one after another. Below \"take\" the page lists every value that nobody typed, with its source. " +
			"Nothing is added before you take it, and one Backspace takes all of it back.",
		"The part's own sheet goes before every value of a kind. A shop puts its own kinds into its catalogue ([[device]]).",
	}},
	{"ends", "terminations, splices, spares, lists", []string{
		"Terminations, from the map: each cavity and what is in it. + reserves a free one. The page says how many more wires two " +
			"connectors can take, and what one more changes. A cavity without a wire in a sealed connector takes a contact and a plug; " +
			"in a firewall it takes a stub of wire as well.",
		"Splices: barrels, part, where the sleeve lies. Lists: wire by reel, longest first; contacts to buy with plugs, samples and 5 % " +
			"more; strip, tool and pull; spares; units to make first.",
		"A wire's page says which spare can replace it and what to re-pin. A spare with a cavity at one end only is dead-ended: it is " +
			"capped at a breakout or termination and folded back. The lists say where its cap lies.",
	}},
	{"connectors", "which connector takes these wires", []string{
		"The row connector of a termination lists what must go in: its wires by size, drains, cavities kept free. + - and digits ask " +
			"for more, spares among them. Below are the arrangements that take all of it, small shells first: how many cavities each " +
			"leaves free, and of which size. ? marks one whose seal does not suit a wire; the line below says which.",
		"Enter takes an arrangement. Cavities keep their names where it has them and the contact takes the wire; the rest moves in " +
			"order. One undo takes it all back.",
		"Any other arrangement: type how many cavities, then Enter. What this harness has comes first. + - turns pin and socket. The " +
			"face is drawn from the rear, where the wires go in: o is a cavity whose name has no room, O one of a larger contact.",
	}},
	{"drawing", "the harness on its board", []string{
		"From the map, \"drawing of the board\" shows the harness as it lies on its board, seen from above. The longest way is straight, " +
			"legs leave to both sides in turn, nothing crosses. The branch of the row you are on is drawn heavier.",
		"+ turns that branch to the left, - to the right, 5 degrees at a time; digits type the turn. It counts from the way that leads " +
			"to its first end. Press . and it lies by rule again. Lengths stay those of the branches.",
		"Enter opens the branch: \"bends of the drawing\" has where it bends on its way, how far and with what radius. The row " +
			"\"the board\" has its size, its pegs and its datum. What is longer than the board is drawn broken, with the true length.",
		"? marks a branch that crosses another, or a bend without room. contralay drawing FILE -o DIR prints all of it at full size.",
	}},
	{"more", "everything in the file", []string{
		"From the map: \"this harness\" has name, number, revision and supply; \"rules of this shop\" has each limit with its default " +
			"and what it changes on this harness; \"everything in the file\" lists every table. On the page of a wire, feed, splice, " +
			"termination, layer or cover the row \"all its values\" opens the rest.",
		"Each row is one value. + and - step it, digits type a number, Enter opens a list or a field. Press . to leave it out: the row " +
			"then shows what holds instead, such as 16 mm by the rules. A value that cannot be is refused, with what is allowed.",
		"What holds several values has a page of its own: \"add\" adds one, . removes one, + and - move a row where the order counts. " +
			"\"None: say so\" writes down that there is none.",
		"The record of what was built can be corrected there too. Each such page names the serial whose record it changes.",
	}},
	{"why", "how a figure was made", []string{
		"W on a row explains its figures and those of the strip below: the rule in words, the values it uses, the source of each, and " +
			"what would change the figure most. + and - go from figure to figure. Enter on a value that was worked out shows how that " +
			"was made; Esc comes back.",
		"The last row of each step lists all its figures. The source of a value is: measured or given here, published, common practice, " +
			"or from memory. ~ marks every figure that rests on memory: measure it, or check the part's sheet.",
	}},
	{"marks", "the marks", []string{
		" >   the row you are on",
		" !   stop: it cannot be built, or would burn, leak or come apart",
		" ?   warning: a limit is passed",
		" -   note: worth knowing",
		" =   the lay-up or tube in use",
		" *   tracer: the wire of a layer whose colour no other has; it lies first",
		" ~   rests on a value from memory",
		" [ ] the piece you are on, in the section; a drawn one has a ring round it",
		"The section shows wires in the colours of their insulation, units with their cores, spares as outlines, fillers hatched. " +
			"The layer you are on carries its numbers, or the wire you are on and the two next to it. The arrow shows how the wires of " +
			"that layer go over the top. * goes on to other colours, then looks closer.",
		"In plain characters it is a map: ( ) next to the piece you are on, o filler, + no room for that label.",
	}},
	{"words", "the words", []string{
		" OD        diameter over the high spots: what callipers read",
		" tape dia. length of a tight string round it, divided by pi",
		" LH, RH    away from you over the top to the left, to the right",
		" lay       lay length: one turn of a wire, along the bundle",
		" 22 of 23  a layer holds 22 of the 23 pieces it can hold",
		" proud     how far a tight layer stands off what it lies on",
		" lay loss  wire length over bundle length, from the twist",
		" loop      stays in the boot; tail: cut off after pinning",
		" spare     a wire laid in for later, a cavity free at both ends",
		" dead end  a spare with a cavity at one end, capped at the other",
		" filler    a piece that only keeps a layer round",
		" unit      wires made up first and laid as one piece",
		" zone      sorted and straight at a breakout; the lay stops before it",
	}},
	{"file", "the file", []string{
		"One TOML file is one harness, in mm, A, V, C and g, whatever the screen shows. The least that loads:",
		" format = 1\n [[termination]]\n id = \"P1\"\n cavities = [\"1\", \"2\"]\n [[termination]]\n id = \"INJ1\"\n cavities = " +
			"[\"1\", \"2\"]\n [[wire]]\n id = \"101\"\n from = \"P1:1\"\n to = \"INJ1:1\"\n spec = \"AS22759/32\"\n size = \"22\"\n " +
			"[[branch]]\n id = \"T1\"\n from = \"P1\"\n to = \"INJ1\"\n length_mm = 450.0",
		"Branches make a tree between terminations and breakouts ([[breakout]] id). At the bench every key has its row: see " +
			"contralay help more. testdata/every-key.toml has them all.",
	}},
	{"recovery", "when something cuts the bench off", []string{
		"After each change your work goes to a journal in your state folder ($XDG_STATE_HOME, else ~/.local/state, under contralay). The " +
			"next start on the same file offers it and says what differs. You can undo taking it. If you leave it, the next start offers " +
			"it again. Only + on its own row throws it away.",
		"A save writes a new file, swaps it in and keeps the one before as .bak: the file is always the old one or the new one, whole. " +
			"If somebody else wrote the file since you opened it, a save asks before it writes over theirs.",
		"Unsaved work that is torn, empty or from a newer contralay is named with its path before the bench opens, and kept until you " +
			"delete it there with +. What a killed program was writing beside the harness is removed.",
		"Where no journal can be kept, the head of the screen says so. If a killed program leaves the terminal odd, type: reset.",
	}},
	{"cautions", "the cautions", Cautions()},
}

// Cautions stand at first start, in the help and in the README.
func Cautions() []string {
	return []string{
		"This is a planning aid, not an approval. Check against the makers' sheets, the technical regulations of the series and local " +
			"codes. Leave to licensed practice what the law reserves to it.",
		"It does not rate fuel-wetted parts, safety-critical circuits or anything above 60 V DC.",
		"Disconnect the battery. Work a heat gun in fresh air, away from fuel. Make and pull sample crimps. Ring out before any adhesive.",
	}
}

// Welcome is what the first screen says until the first key.
func Welcome() []string {
	return []string{
		"Arrows choose, Enter takes, + - change.",
		"Right: lay-ups worth having, then sheaths.",
		"W shows how a figure was made. H is help.",
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
