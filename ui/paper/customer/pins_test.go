package customer

import (
	"fmt"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/record"
	"contralay/ui/paper/connector"
	"contralay/ui/paper/list"
)

// loom is a trunk with connectors of an insert at both ends, and so many more beside them.
func loom(t *testing.T, inserts ...string) Set { return loomOf(t, "P", inserts...) }

// loomOf is the same with other names of its ends.
func loomOf(t *testing.T, name string, inserts ...string) Set {
	t.Helper()
	text := "format = 1\n[[termination]]\nid = \"X\"\ncavities = [\"1\", \"2\"]\n[[breakout]]\nid = \"J\"\n[[branch]]\nid = " +
		"\"T0\"\nfrom = \"X\"\nto = \"J\"\nlength_mm = 400.0\n"
	for k, insert := range inserts {
		text += fmt.Sprintf("[[termination]]\nid = \"%s%d\"\nname = \"end\"\ninsert = %q\ngender = \"pin\"\nkey = "+
			"\"N\"\n[[branch]]\nid = \"T%d\"\nfrom = \"J\"\nto = \"%s%d\"\nlength_mm = 200.0\n", name, k+1, insert, k+1, name, k+1)
	}
	if len(inserts) > 0 {
		text += "[[wire]]\nid = \"1\"\nfrom = \"" + name + "1:A\"\nto = \"X:1\"\nspec = \"AS22759/32\"\nsize = \"22\"\nsignal = " +
			"\"feed\"\ncolour = \"2\"\n"
	}
	return Set{Maker: list.MakerOf(calctest.Built(t, text)), On: "2026-05-13"}
}

// Faces stand in rows of a page of 186 mm with 5 before each, none narrower than 40 mm with its name; beside one alone stand the words,
// where more than 50 mm are left.
func TestFacesInRows(t *testing.T) {
	one := loom(t, "8-98")
	p, ok, _ := connector.Face(one.Maker, 1)
	if !ok {
		t.Fatal("no face")
	}
	wide := max(p.Wide, 40)
	blocks := one.faces()
	text := string(blocks[0].HTML)
	if want := fmt.Sprintf(`<div style="width:%.2fmm;margin-left:5.00mm">`, float64(186-5-wide-5)); len(blocks) != 2 ||
		!strings.Contains(text, want) || !strings.Contains(text, fmt.Sprintf(`<div style="width:%.2fmm;margin-left:0.00mm">`,
		float64(wide))) ||
		!strings.Contains(text, "Seen from the wire side") ||
		shown(blocks)[1] != "Ends that are not drawn have no insert in the catalogue: the pinout has them." {
		t.Errorf("%d blocks, %s", len(blocks), text)
	}
	per := int((186 + 5) / (wide + 5))
	for n := 2; n <= per+1; n++ {
		inserts := make([]string, n)
		for k := range inserts {
			inserts[k] = "8-98"
		}
		blocks := loom(t, inserts...).faces()
		rows := (n + per - 1) / per
		beside := 0
		for k, b := range blocks {
			if faces := strings.Count(string(b.HTML), `class="face"`); faces > 0 {
				if want := min(per, n-k*per); faces != want {
					t.Errorf("%d faces: %d in row %d, by hand %d", n, faces, k, want)
				}
				beside++
			}
		}
		last := shown(blocks)
		if beside != rows || !strings.Contains(strings.Join(last, "|"), "Seen from the wire side") {
			t.Errorf("%d faces in %d rows, by hand %d: %q", n, beside, rows, last)
		}
	}
	if got := loom(t).faces(); got != nil { // without a face nothing is said of ends that have none
		t.Errorf("%q", shown(got))
	}
	unknown := loom(t, "8-98")
	unknown.H.Terminations[1].Gender.Set, unknown.H.Terminations[1].Gender.V = false, ""
	if got := shown(unknown.faces()); len(got) != 1 || !strings.HasPrefix(got[0],
		"P1: No face is drawn: the file does not say whether P1 has pins or sockets") {
		t.Errorf("%q", got)
	}
}

// The pinout, by hand: a title for a connector with an insert, its cavities below; of others the end before the first.
func TestPinoutByHand(t *testing.T) {
	c := loom(t, "8-98")
	all := shown(c.pins())
	var rows []string
	for _, l := range all {
		if strings.Contains(l, "|") && !strings.Contains(l, "Rear of") || strings.HasPrefix(l, "*P1") {
			rows = append(rows, l)
		}
	}
	if got := strings.Join(rows,
		" / "); got != "cavity|wire|colour|signal|leads to / *X:1|*1|red|feed|P1:A / *P1 end, insert 8-98, pins, key N / "+
		"*A|*1|red|feed|X:1" {
		t.Errorf("%s", got)
	}
	if got := c.title(1); got != "P1  end, insert 8-98, pins, key N" || c.title(0) != "X" {
		t.Errorf("%q %q", got, c.title(0))
	}
	if strings.Contains(strings.Join(all, " "), "leads to that splice") {
		t.Error("a splice is named where there is none")
	}
	var file []string
	for _, r := range c.pinout().Rows {
		file = append(file, strings.Join(r, "|"))
	}
	if got := strings.Join(file, " "); got != "X|1|1|red|feed|P1:A P1|A|1|red|feed|X:1" {
		t.Errorf("%s", got)
	}
	if shortEnd("splice S1") != "S1" || shortEnd("capped at J1") != "capped\u00a0at\u00a0J1" {
		t.Error("ends in short")
	}
	none := loom(t)
	if got := shown(none.pins()); len(got) != 1 || got[0] != "No cavity has a wire in it." {
		t.Errorf("%q", got)
	}
}

// The pages in their order, by hand: the certificate first where a serial was named, and the drawing on a page of its own behind it; the
// record last.
func TestOrderOfThePages(t *testing.T) {
	c := loom(t, "8-98")
	sections := func(c Set) (out []string) {
		for _, b := range c.Blocks() {
			if b.Section != "" {
				out = append(out, map[bool]string{true: "new "}[b.NewPage]+b.Section)
			}
		}
		return out
	}
	if got := strings.Join(sections(c), ", "); got != "Drawing and pinout, Spares, loops and repair" {
		t.Errorf("%s", got)
	}
	if text := shown(c.drawing())[1]; text != "+These pages hold for every serial. No serial was named, so there is no certificate "+
		"and no record with them." {
		t.Errorf("%q", text)
	}
	c.Record = &record.Record{Serial: "1", Open: []string{"x"}}
	if got := strings.Join(sections(c), ", "); got != "NOT COMPLETE, new Drawing and pinout, Spares, loops and repair, As built" {
		t.Errorf("%s", got)
	}
	if text := strings.Join(shown(c.drawing()), " "); strings.Contains(text, "No serial was named") {
		t.Errorf("%q", text)
	}
	files := ""
	for _, l := range c.Lists() {
		files += l.File + " "
	}
	if files != " pinout repair mass tests as-built" && files != "pinout  repair mass tests as-built " {
		t.Errorf("%q", files)
	}
}

// A drawing whose words crowd it has its ends alone, and the lengths stand in the table of branches.
func TestACrowdedDrawing(t *testing.T) {
	if c := loom(t, "8-98"); c.crowded() || !strings.Contains(string(c.drawn()[0].HTML), "Scale 1:") {
		t.Error("two branches are crowded")
	}
	if c := (Set{Maker: list.MakerOf(calctest.Built(t, "format = 1\n"))}); c.crowded() || c.drawn() != nil {
		t.Error("nothing is drawn")
	}
	var many []string
	for range 12 {
		many = append(many, "8-98")
	}
	c := loomOf(t, "a-long-name-of-an-end-", many...)
	if !c.crowded() {
		t.Fatal("eight legs of long names are not crowded")
	}
	got := c.drawn()
	if len(got) != 2 || strings.Contains(string(got[0].HTML), "Scale") ||
		shown(got)[1] != "True proportions, each end by its name. The table of branches has their lengths. The full-size drawing is "+
			"a file of its own." {
		t.Errorf("%v high: %q", got[0].High, shown(got))
	}
}

// The card to cut out, by hand: in one dashed frame where it goes on a page, else cut between its rows.
func TestTheCard(t *testing.T) {
	c := loom(t, "8-98")
	c.Spares = list.Table{Head: []string{"wire"}, Align: []list.Align{list.ToLeft}, Rows: [][]string{{"109"}}}
	card := c.card()
	text := string(card[1].HTML)
	if len(card) != 2 || card[0].Section != CardName || card[1].Gap != 1.5 || !strings.HasPrefix(text,
		`<div style="outline:.3mm dashed #000;outline-offset:.7mm">`) || !strings.HasSuffix(text, "</div>") || !strings.Contains(text,
		">109<") {
		t.Errorf("%d blocks: %s", len(card), text)
	}
	rows := len(shown(card))
	c.Spares.Rows = nil
	if text := string(c.card()[1].HTML); !strings.Contains(text, "There is no spare wire in it.") {
		t.Errorf("%s", text)
	}
	for range 100 {
		c.Spares.Rows = append(c.Spares.Rows, []string{"109"})
	}
	card = c.card()
	if all := strings.Join(shown(card), " "); len(card) < 4 || strings.Contains(all, "Cut out along the dashes") || !strings.Contains(all,
		"+Each new contact takes some of the loop at its end.") || len(shown(card)) < rows+90 {
		t.Errorf("%d blocks", len(card))
	}
	// A contact that was made anew takes of what is left at its end, and no more than there is.
	ends := c.repairRows()
	for _, r := range ends {
		if r.used != 0 || r.left() != r.LoopRoom.Again {
			t.Errorf("%+v", r)
		}
	}
	r := repairRow{used: 1}
	if r.LoopRoom.Again = 2; r.left() != 1 {
		t.Errorf("%d", r.left())
	}
	if r.used = 3; r.left() != 0 {
		t.Errorf("%d", r.left())
	}
}
