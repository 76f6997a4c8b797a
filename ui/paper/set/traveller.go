package set

import (
	"fmt"
	"html/template"
	"slices"
	"strings"

	"contralay/calc/phase/over"
	"contralay/calc/query/lists"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model/unit"
	"contralay/model/visible"
	"contralay/ui/guide"
	"contralay/ui/paper/board"
	"contralay/ui/paper/list"
	"contralay/ui/paper/meter"
	"contralay/ui/paper/page"
	"contralay/ui/paper/svg"
)

// The sections of the set, as its contents names them.
const (
	TravellerName = "Traveller"
	DrawingName   = "Drawing"
	KitName       = "Kit"
	CutName       = "Cut list"
	UnitsName     = "Made up first"
	CardsName     = "Lay cards"
	LegsName      = "Legs"
	SplicesName   = "Splices"
	ThreadName    = "Threading"
	CrimpName     = "Crimping"
	OthersName    = "All other ends"
	TestName      = "Electrical tests"
	SparesName    = "Spares and loops"
)

// Traveller is the first page: what is built, what is open, what stands where, and where each step is
// signed. rest are the blocks of all pages behind it, for the contents.
func Traveller(m list.Maker, rest []page.Block) []page.Block {
	head := page.Stack(named(m)...)
	head.Section = TravellerName
	out := []page.Block{head}
	out = append(out, seen(m, rest))
	out = append(out, flow(m)...)
	out = append(out, signed(), cautions())
	return append(out, openPoints(m)...)
}

// named is the name of the harness, its sums, and whether it can be built.
func named(m list.Maker) []page.Block {
	h := &m.H.Head
	t := m.S.Totals
	total := fmt.Sprintf("%s, %s, %s, %s, %.1f m of wire", count(t.Wires, "wire"), count(t.Units, "made-up unit"),
		count(t.Spares, "spare"), count(t.Fillers, "filler"), float64(t.WireMM)/1000)
	if t.Gram.Set {
		total += fmt.Sprintf(", %.0f g without its covers", float64(t.Gram.V))
	}
	out := []page.Block{page.TextIn(list.Dash(h.Name.V), page.Title, page.Wide),
		page.Text(total+". Lengths and diameters in "+m.Sys.Name()+". ~ marks a figure that rests on memory: measure it, or check "+
			"the part's sheet.", page.Small)}
	if note := visible.Note(h.Note.V); note != "" {
		out = append(out, page.Text(note, page.Small))
	}
	stops := 0
	for _, g := range sheet.Grouped(m.S.Snags) {
		if g.Level == sheet.Stop {
			stops++
		}
	}
	if stops > 0 {
		says := fmt.Sprintf("Do not build it as it is: %s, first of the open points.", count(stops, "stop"))
		out = append(out, boxed(says, page.Heading, true))
	}
	return out
}

// count is a number of things: "1 wire", "3 wires".
func count(n int, what string) string {
	if n == 1 {
		return "1 " + what
	}
	return fmt.Sprintf("%d %ss", n, what)
}

// boxed is a text in a heavy frame, shaded or not.
func boxed(says string, l page.Letter, shade bool) page.Block {
	g := page.Grid{Cols: []page.Col{{Wide: page.Wide}}, Lines: []page.Line{{Cells: []page.Cell{{Text: says, Shade: shade}}}}, Letter: l,
		Bare: true}
	return page.Stack(g.Block())
}

// What the small drawing and the contents beside it take of the traveller, mm.
const (
	smallWide    unit.Millimetre = 112
	smallHigh    unit.Millimetre = 58
	contentsWide                 = page.Wide - smallWide - 4
)

// seen is the harness in small, and the contents beside it.
func seen(m list.Maker, rest []page.Block) page.Block {
	contents := page.Column{Wide: contentsWide, Blocks: []page.Block{page.SubHeading("Contents"),
		page.Contents(rest, page.Small, contentsWide)}}
	drawn := board.Small(m.S, smallWide, smallHigh)
	if drawn == nil {
		return page.Beside(4, contents)
	}
	var b strings.Builder
	svg.Write(&b, drawn, "drawing")
	high := drawn.Box.High.Y - drawn.Box.Low.Y
	picture := page.Picture(template.HTML(b.String()), high) // #nosec: it escapes what it writes
	return page.Beside(4, page.Column{Wide: smallWide, Blocks: []page.Block{picture}}, contents)
}

// openPoints is what the sheet says about itself, worst first.
func openPoints(m list.Maker) []page.Block {
	groups := sheet.Grouped(m.S.Snags)
	head := page.SubHeading("Open points: read before you cut")
	if len(groups) == 0 {
		return []page.Block{head, page.Text("None: nothing stops it, no limit is passed.", page.Small)}
	}
	g := page.Grid{Cols: []page.Col{{Head: "", Wide: 13, Bold: true}, {Head: "where", Least: 14}, {Head: "what"}}, Bare: true}
	for _, x := range groups {
		g.Lines = append(g.Lines, page.Line{Cells: []page.Cell{{Text: x.Level.String()}, {Text: x.Where},
			{Text: m.Sys.Says(x.Says) + x.More()}}, Shade: x.Level == sheet.Stop})
	}
	return []page.Block{head, g.Block()}
}

// Step is one step of the flow: what is done, the section or the place in one that it is done from, and whether
// work stops until it is signed.
type Step struct {
	Says, From string
	Hold       bool
}

// Flow is the work in order. What the harness does not have is left out.
func Flow(m list.Maker) []Step {
	kinds := map[run.StepKind]bool{}
	for _, r := range run.Run(m.S) {
		kinds[r.Kind] = true
	}
	holds := map[string]run.Hold{}
	for _, h := range run.Holds() {
		holds[h.Key] = h
	}
	hold := func(key, from string) Step {
		return Step{Says: "HOLD: " + holds[key].Name, From: from, Hold: true}
	}
	var out []Step
	add := func(is bool, s Step) {
		if is {
			out = append(out, s)
		}
	}
	add(true, Step{Says: "Pick the kit, note lots and tools", From: KitName})
	add(kinds[run.CutStep], Step{Says: "Cut wires, flag both ends", From: CutName})
	add(kinds[run.MakeStep], Step{Says: "Make up units", From: UnitsName})
	add(kinds[run.LayStep], Step{Says: "Lay branches, splice where it says", From: CardsName})
	out = append(out, hold(run.HoldBare, meter.RingMark))
	add(kinds[run.ThreadStep] || kinds[run.WindStep], Step{Says: "Thread on tubes, boots, labels", From: ThreadName})
	add(kinds[run.PinStep], Step{Says: "Pull samples, crimp, insert contacts", From: CrimpName})
	out = append(out, hold(run.HoldPinned, meter.RingMark))
	add(len(lists.Isolations(m.S)) > 0, Step{Says: "Test isolation, devices off", From: meter.IsolationMark})
	out = append(out, hold(run.HoldFit, run.HoldFit))
	add(kinds[run.ShrinkStep], Step{Says: "Shrink tubes, boots, transitions", From: ThreadName})
	add(kinds[run.GlueStep], Step{Says: "Glue boots and transitions", From: ThreadName})
	out = append(out, hold(run.HoldLoaded, meter.DropMark))
	return append(out, Step{Says: "Weigh, inspect, pack with spares card", From: SparesName})
}

// flow is the steps with room to sign beside each.
func flow(m list.Maker) []page.Block {
	steps := Flow(m)
	grid := func(entries []page.Entry) page.Grid {
		g := page.Grid{Cols: []page.Col{{Wide: 6}, {Head: "step", Bold: true}, {Head: "page", Wide: 10, Align: list.ToRight},
			{Head: "signed", Wide: 17, Align: list.ByHand}, {Head: "day", Wide: 14, Align: list.ByHand}}, Columns: 2}
		for k, s := range steps {
			at := ""
			if n := slices.IndexFunc(entries, func(e page.Entry) bool {
				return e.Section == s.From || e.Mark == s.From
			}); n >= 0 {
				at = fmt.Sprint(entries[n].Page)
			}
			line := page.Cells(fmt.Sprint(k+1), s.Says, at, "", "")
			line.Shade, line.High = s.Hold, 7.4
			g.Lines = append(g.Lines, line)
		}
		return g
	}
	whole := page.Stack(grid(nil).Block())
	head := page.SubHeading("Order of work: sign each step, stop at each hold")
	whole.HTML, whole.Late = "", func(entries []page.Entry, _ int) template.HTML { return page.Stack(grid(entries).Block()).HTML }
	return []page.Block{head, whole}
}

// signed is who answers for the sheet.
func signed() page.Block {
	g := page.Grid{Cols: []page.Col{{Head: "sheet drawn by, day", Align: list.ByHand}, {Head: "sheet checked by, day",
		Align: list.ByHand}, {Head: "sheet released to build by, day", Align: list.ByHand}}, Lines: []page.Line{page.Cells("", "", "")}}
	g.Lines[0].High = 9
	b := page.Stack(g.Block())
	b.Gap = 3
	return b
}

func cautions() page.Block {
	b := []page.Block{page.SubHeading("Cautions")}
	for _, c := range guide.Cautions() {
		b = append(b, page.Text(c, page.Small))
	}
	out := page.Stack(b...)
	out.Gap = 2
	return out
}

// Hold is a bar that is met where work stops: what is done before it is signed. Splices and shields have sleeves that
// are shrunk as they are made, before holds that let nothing be shrunk.
func Hold(m list.Maker, key string) page.Block {
	for _, h := range run.Holds() {
		if h.Key == key {
			says := "HOLD, sign page 1: " + h.Name + ". " + list.Capital(h.Says)
			if sleeves := shrunkEarly(m); sleeves != "" && strings.Contains(h.Says, "shr") {
				says += ", " + sleeves + " apart"
			}
			says += "."
			b := boxed(says, page.Small, true)
			b.Gap, b.Mark = 2, key
			return b
		}
	}
	return page.Block{}
}

// shrunkEarly is which sleeves are shrunk as what they cover is made; "" where there are none.
func shrunkEarly(m list.Maker) string {
	var out []string
	if len(m.H.Splices) > 0 {
		out = append(out, "splice")
	}
	if len(over.ShieldEnds(m.S)) > 0 {
		out = append(out, "solder")
	}
	if len(out) == 0 {
		return ""
	}
	return strings.Join(out, " and ") + " sleeves"
}

// Drawing is the harness to scale on a page of its own.
func Drawing(m list.Maker) []page.Block {
	head := page.Section(DrawingName)
	head.NewPage = true
	const margin = 3 // for what rounding takes
	room := page.BodyHigh - head.High - margin
	drawn, notes := board.Page(m.S, page.Wide, room, m.Sys)
	var says []page.Block
	for _, n := range notes {
		b := page.Text(visible.Line(m.Sys.Says(n.Says))+".", page.Small)
		says = append(says, b)
	}
	if len(says) > 0 {
		drawn, _ = board.Page(m.S, page.Wide, max(150, room-page.Stack(says...).High-2), m.Sys)
	}
	if drawn == nil {
		return nil
	}
	var b strings.Builder
	svg.Write(&b, drawn, "drawing")
	picture := page.Picture(template.HTML(b.String()), drawn.Box.High.Y-drawn.Box.Low.Y) // #nosec: it escapes what it writes
	return append([]page.Block{head, picture}, says...)
}
