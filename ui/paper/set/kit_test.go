package set

import (
	"html"
	"regexp"
	"slices"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/lists"
	"contralay/calc/query/run"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/unit"
	"contralay/ui/paper/list"
	"contralay/ui/paper/meter"
	"contralay/ui/paper/page"
)

var (
	trs  = regexp.MustCompile(`(?s)<tr([^>]*)>(.*?)</tr>`)
	tds  = regexp.MustCompile(`(?s)<t[dh]([^>]*)>(.*?)</t[dh]>`)
	tags = regexp.MustCompile(`<[^>]*>`)
)

// lines is blocks in lines: a row with strokes between its cells, # before a grey one, = before a title; a text as it is.
func lines(blocks []page.Block) (out []string) {
	for _, b := range blocks {
		text := string(b.HTML)
		if b.Cut != nil {
			text = ""
			for _, r := range b.Cut.Rows {
				text += string(r.HTML)
			}
		}
		text = strings.NewReplacer("<br>", " ", "</div><div>", " ", "\u00a0", "_").Replace(text)
		plain := func(s string) string {
			return html.UnescapeString(strings.Join(strings.Fields(tags.ReplaceAllString(s, "")), " "))
		}
		rows := trs.FindAllStringSubmatch(text, -1)
		if len(rows) == 0 {
			out = append(out, plain(text))
		}
		for _, r := range rows {
			var cells []string
			for _, c := range tds.FindAllStringSubmatch(r[2], -1) {
				cells = append(cells, plain(c[2]))
			}
			mark := ""
			if strings.Contains(r[1], "shade") || strings.Contains(r[2], "shade") {
				mark = "#"
			}
			if strings.Contains(r[1], "title") {
				mark = "="
			}
			out = append(out, mark+strings.Join(cells, "|"))
		}
	}
	return out
}

func same(t *testing.T, what string, got []string, want ...string) {
	t.Helper()
	if !slices.Equal(got, want) {
		t.Errorf("%s:\n%s\nwant\n%s", what, strings.Join(got, "\n"), strings.Join(want, "\n"))
	}
}

// Rows of the bill in words, by hand.
func TestRowsOfTheBillInWords(t *testing.T) {
	m := list.Maker{Sys: unit.MM}
	wire := func(part, colour string, need, order float64) lists.BillRow {
		return lists.BillRow{Group: "wire", Part: part, Colour: colour, Need: need, Order: order, Metres: true}
	}
	rows := []lists.BillRow{wire("SPEC 20", "0", 0.82, 1.14), wire("SPEC 20", "2", 0.6, 0.66), {Group: "boot", Part: "x"}, wire("SPEC 22",
		"", 1, 2)}
	rows[1].Stock.Number = "R-7"
	g := spools(rows)
	same(t, "spools", lines([]page.Block{g.Block()}), "=SPEC 20 AWG", "0 black|0.8|", "2 red|0.6|R-7", "=SPEC 22 AWG", "-|1.0|")
	if !g.Lines[0].KeepNext || g.Columns != 4 {
		t.Errorf("%+v", g)
	}
	if got := reelName("SPEC 0.35mm2"); got != "SPEC 0.35 mm2" {
		t.Errorf("%q", got)
	}
	if got := ordered(rows); got != "SPEC 20 AWG 1.8 m, SPEC 22 AWG 2.0 m" || ordered(nil) != "" {
		t.Errorf("%q", got)
	}
	for want, r := range map[string]lists.BillRow{"1.3 m": {Metres: true}, "1": {}} {
		if got := amount(r, 1.26); got != want {
			t.Errorf("%q, want %q", got, want)
		}
	}
	for _, c := range []struct {
		r    lists.BillRow
		want string
	}{{lists.BillRow{Part: "P"}, "P"}, {lists.BillRow{Group: "x", Part: "P", Says: "s"}, "P, s"}, {lists.BillRow{Group: "wire flag",
		Part: "P", Says: "s"}, "P"}, {lists.BillRow{Group: "tape", Part: "P", Says: "s"}, "P"},
		{lists.BillRow{Group: "seal plug", Part: "P", Says: "s"}, "P"}, {lists.BillRow{Part: "P", Stock: catalogue.Stock{Number: "N"}},
			"P, order N"},
		{lists.BillRow{Part: "P", Says: "s", Stock: catalogue.Stock{Number: "N", Supplier: "S"}}, "P, s, order N from S"}} {
		if got := partOf(m, c.r); got != c.want {
			t.Errorf("%q, want %q", got, c.want)
		}
	}
	part := func(group, part, number string) lists.BillRow {
		return lists.BillRow{Group: group, Part: part, Stock: catalogue.Stock{Number: number}}
	}
	if got := unnumbered(m, []lists.BillRow{part("boot", "boot-x", ""), part("boot", "cap", ""), part("connector", "8-98", ""),
		part("connector", "8-35", "N"), part("ring terminal", "ring M5", ""), part("ring terminal", "M6", ""), part("tape", "t",
			"")}); got !=
		"No part number: boot-x, boot cap, connector 8-98, ring M5, ring terminal M6. Order them by their words, or type yours into "+
			"the catalogue ([[stock]])." {
		t.Errorf("%q", got)
	}
	if got := unnumbered(m, nil); got != "" {
		t.Errorf("%q", got)
	}
	open := []lists.BillRow{{Group: "connector", Part: "Lamp", Need: 1, Open: "no part is given"}, {Group: "connector", Part: "Pump",
		Need: 2, Open: "no part is given"}, {Group: "tape", Part: "T", Colour: "2", Need: 1.5, Metres: true, Open: "no part is given"},
		{Group: "seal", Part: "S", Need: 4, Open: "no size"}}
	same(t, "open", lines(unsettled(m, open)), "To settle before you order",
		"No part is given. Connector: 1 x Lamp; 2 x Pump; tape 2 red: 1.5 m x T.", "No size. Seal: 4 x S.")
	if count(1, "wire") != "1 wire" || count(0, "wire") != "0 wires" || count(2, "wire") != "2 wires" {
		t.Error("numbers of things")
	}
}

const loom = `format = 1
[[termination]]
id = "A"
cavities = ["1", "2", "3", "4"]
[[termination]]
id = "Z"
cavities = ["1", "2", "3", "4"]
[[branch]]
id = "T1"
from = "A"
to = "Z"
length_mm = 400.0
`

func wires(lines ...string) string {
	var b strings.Builder
	b.WriteString(loom)
	for _, l := range lines {
		f := strings.Fields(l) // id cavity size colour
		b.WriteString("[[wire]]\nid = \"" + f[0] + "\"\nfrom = \"A:" + f[1] + "\"\nto = \"Z:" + f[1] +
			"\"\nspec = \"AS22759/32\"\nsize = \"" + f[2] + "\"\ncolour = \"" + f[3] + "\"\n")
	}
	return b.String()
}

// The cut list by spool: alike wires of one colour are one batch, with how many, how long and how much has come off the spool, by hand.
func TestBatchesByHand(t *testing.T) {
	m := list.MakerOf(calctest.Built(t, wires("1 1 22 2", "2 2 22 2", "3 3 20 0", "4 4 22 0")))
	for k := range m.S.Wires {
		if m.S.Wires[k].Cut != m.S.Wires[0].Cut || m.S.Wires[k].Cut <= 0 {
			t.Fatalf("they are not cut alike: %v", m.S.Wires[k].Cut)
		}
	}
	cut := m.S.Wires[0].Cut
	one, two := m.Sys.AtLeast(cut), m.Sys.AtLeast(2*cut)
	blocks := Cut(m)
	rows := lines(blocks)[2:]
	both := []string{"1|2_×_" + one + "|red|A:1|Z:1|" + two + "|", "2|||A:2|Z:2||", "4|" + one + "|black|A:4|Z:4|" + one + "|"}
	last := []string{"3|" + one + "|black|A:3|Z:3|" + one + "|"}
	want := slices.Concat([]string{"=AS22759/32 22 AWG"}, both, []string{"=AS22759/32 20 AWG"}, last)
	if rows[0] != want[0] {
		want = slices.Concat([]string{"=AS22759/32 20 AWG"}, last, []string{"=AS22759/32 22 AWG"}, both)
	}
	same(t, "cut list", rows, want...)
	keeps := ""
	for _, r := range blocks[2].Cut.Rows {
		keeps += map[bool]string{true: "1", false: "0"}[r.KeepNext]
	}
	if keeps != "110010"[:len(keeps)] && keeps != "101100" { // a title stays with its first wire, a batch together
		t.Errorf("%s stay with the next", keeps)
	}
	m.H.Units = []model.Unit{{ID: "C1", Wires: []string{"1"}}}
	if all := strings.Join(lines(Cut(m)), " "); !strings.Contains(all, "1_C1|") || strings.Contains(all, "2_C1|") {
		t.Errorf("%s", all)
	}
}

// What is said on the first page, by hand: sums, stops, open points; each step once with its page.
func TestTravellerByHand(t *testing.T) {
	m := list.MakerOf(calctest.Built(t, wires("1 1 22 2", "2 2 22 2")))
	m.H.Head.Name, m.H.Head.Note = model.Some("loom"), model.Some("take care")
	m.S.Totals = sheet.Totals{Wires: 1, Units: 2, Spares: 1, Fillers: 3, WireMM: 1260}
	m.S.Snags = nil
	const rest = " Lengths and diameters in mm. ~ marks a figure that rests on memory: measure it, or check the part's sheet."
	same(t, "named", lines(named(m)), "loom", "1 wire, 2 made-up units, 1 spare, 3 fillers, 1.3 m of wire."+rest, "take care")
	same(t, "no point", lines(openPoints(m)), "Open points: read before you cut", "None: nothing stops it, no limit is passed.")
	m.S.Totals.Gram = model.Some[unit.Gram](12.6)
	m.H.Head.Note = model.Opt[string]{}
	m.S.Snags = []sheet.Snag{{Level: sheet.Stop, Rule: "r", Where: "T1", Says: "it is 5 mm off"}, {Level: sheet.Note, Rule: "n",
		Where: "L1", Says: "note"}}
	same(t, "stopped", lines(named(m)), "loom",
		"1 wire, 2 made-up units, 1 spare, 3 fillers, 1.3 m of wire, 13 g without its covers."+rest,
		"#Do not build it as it is: 1 stop, first of the open points.")
	same(t, "points", lines(openPoints(m)), "Open points: read before you cut", "#stop|T1|it is 5 mm off", "note|L1|note")
	entries := []page.Entry{{Section: KitName, Page: 3}, {Mark: meter.RingMark, Page: 7}, {Section: CutName, Page: 4}}
	blocks := flow(m)
	text := lines([]page.Block{{HTML: blocks[1].Late(entries, 9)}})
	var steps []string
	for _, l := range text {
		if strings.Count(l, "|") == 4 && !strings.Contains(l, "step|page") {
			steps = append(steps, l)
		}
	}
	all := Flow(m)
	if len(steps) != len(all) || steps[0] != "1|Pick the kit, note lots and tools|3||" || steps[1] != "2|Cut wires, flag both ends|4||" ||
		!strings.HasPrefix(steps[2], "3|Lay branches") || steps[3] != "#4|HOLD: ring out bare|7||" ||
		!strings.HasSuffix(steps[len(steps)-1], "|Weigh, inspect, pack with spares card|||") {
		t.Errorf("%s", strings.Join(steps, "\n"))
	}
	holds := 0
	for k, s := range all {
		if s.Hold {
			holds++
		}
		if strings.HasPrefix(steps[k], "#") != s.Hold {
			t.Errorf("%s, a hold: %v", steps[k], s.Hold)
		}
	}
	if holds != 4 || blocks[1].HTML != "" {
		t.Errorf("%d holds", holds)
	}
	from := ""
	for _, s := range all {
		from += s.From + "; "
	}
	want := "Kit; Cut list; Lay cards; ring-out; Threading; Crimping; ring-out; isolation; " + run.HoldFit +
		"; Threading; loaded drop; Spares and loops; " // two wires are twisted, and a sheath is proposed
	if from != want {
		t.Errorf("%s", from)
	}
}

// Steps that a loom does not have are left out; every-key.toml has units to make up and joints to glue.
func TestStepsOfALoom(t *testing.T) {
	has := func(m list.Maker, says string) bool {
		return slices.ContainsFunc(Flow(m), func(s Step) bool { return s.Says == says })
	}
	full, bare := list.MakerOf(calctest.Laid(t, "every-key")), list.MakerOf(calctest.Built(t, loom))
	for _, says := range []string{"Glue boots and transitions", "Make up units", "Lay branches, splice where it says",
		"Thread on tubes, boots, labels", "Test isolation, devices off", "Shrink tubes, boots, transitions"} {
		if !has(full, says) || has(bare, says) {
			t.Errorf("%q: %v, of a bare loom %v", says, has(full, says), has(bare, says))
		}
	}
	if out := glue(full); len(out) != 3 || !strings.HasPrefix(lines(out)[0], "Adhesive: ") || !out[1].KeepNext ||
		!strings.HasPrefix(lines(out)[1], "Not before it is rung out with contacts in. Abrade, wipe, recover, let cure; ") ||
		glue(bare) != nil {
		t.Errorf("%q", lines(out))
	}
	full.S.Limits.PotLifeMin = 1
	if says := lines(glue(full))[1]; !strings.HasSuffix(says, "; used within 1 minutes of mixing; its sheet says how it cures.") {
		t.Errorf("%q", says)
	}
	full.S.Limits.PotLifeMin = 0
	if says := lines(glue(full))[1]; !strings.HasSuffix(says, "; its sheet says how long it can be used, and how it cures.") {
		t.Errorf("%q", says)
	}
}

// What a hold says, by hand: which sleeves are shrunk before it where it speaks of shrinking.
func TestHoldsByHand(t *testing.T) {
	m := list.MakerOf(calctest.Built(t, wires("1 1 22 2")))
	for _, h := range run.Holds() {
		b := Hold(m, h.Key)
		says := strings.Join(lines([]page.Block{b}), "")
		if want := "#HOLD, sign page 1: " + h.Name + ". " + list.Capital(h.Says) + "."; says != want || b.Mark != h.Key || b.Gap != 2 {
			t.Errorf("%q, want %q", says, want)
		}
	}
	if b := Hold(m, "none"); b.HTML != "" || b.Mark != "" {
		t.Errorf("%+v", b)
	}
	m.H.Splices = []model.Splice{{ID: "S1"}}
	if got := shrunkEarly(m); got != "splice sleeves" {
		t.Errorf("%q", got)
	}
	says := strings.Join(lines([]page.Block{Hold(m, run.HoldPinned)}), "")
	if !strings.HasSuffix(says, ", splice sleeves apart.") {
		t.Errorf("%s", says)
	}
	if says := strings.Join(lines([]page.Block{Hold(m, run.HoldBare)}), ""); strings.Contains(says, "apart") {
		t.Errorf("%s", says)
	}
}

// Pieces of tube, by hand: by part, the longest first; covers that are no sheath say what they are.
func TestTubesByPart(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "T1"}, {ID: "T2"}, {ID: "T3"}}}
	tube := model.Some(catalogue.Tube{})
	m := list.Maker{H: h, S: &sheet.Sheet{H: h, Branches: []sheet.Branch{{Sheath: sheet.Sheath{Part: "B", Tube: tube, CutMM: 100},
		Covers: []sheet.Covered{{What: model.CoverSleeve, Part: "A", CutMM: 50}, {What: model.CoverTape}}},
		{Sheath: sheet.Sheath{Part: "B", Tube: tube, CutMM: 300}, Covers: []sheet.Covered{{What: model.CoverBraid, CutMM: 0.5}}},
		{Sheath: sheet.Sheath{Part: "unknown"}}}}}
	same(t, "tubes", lines(Tubes(m)), "Tube pieces: sheath, where no other word stands", "=-", "T2, braid|"+m.Sys.AtLeast(0.5)+"|", "=A",
		"T1, sleeve|50|", "=B", "T2|300|", "T1|100|")
	m.S.Branches = m.S.Branches[2:]
	if got := Tubes(m); got != nil {
		t.Errorf("%v", got)
	}
}

// Loops of ends, by hand: alike ones together, with what is left of each.
func TestLoopsAlike(t *testing.T) {
	m := list.MakerOf(calctest.Built(t, wires("1 1 22 2")))
	got := lines(Spares(m, list.Table{}, map[string]int{"Z": 9}))
	loop := regexp.MustCompile(`^Loop \d+ mm, good for (\d+), used so far (\d+), left (\d+): (.*)$`)
	a, z := loop.FindStringSubmatch(got[3]), loop.FindStringSubmatch(got[4])
	if len(got) != 5 || got[1] != "No spare wires." || a == nil || z == nil || a[2] != "0" || a[3] != a[1] || a[4] != "A_[__]" ||
		z[2] != "9" || z[3] != "0" || z[4] != "Z_[__]" {
		t.Errorf("%q", got)
	}
	got = lines(Spares(m, list.Table{Title: "t", Head: []string{"wire"}, Align: []list.Align{list.ToLeft}, Rows: [][]string{{"109"}}}, nil))
	if len(got) != 4 || got[1] != "109" || !strings.HasSuffix(got[3], ": A_[__] Z_[__]") {
		t.Errorf("%q", got)
	}
	m.H.Terminations = nil
	if got := lines(Spares(m, list.Table{}, nil)); len(got) != 2 {
		t.Errorf("%q", got)
	}
}
