package paper

import (
	"errors"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/unit"
	"contralay/ui/paper/list"
)

// The sections and parts of the set of the small loom, each on its page, as they were read off the printed pages; on request what each
// wire carries, the
// flags and the loops are added at the end. What it was made from stands last.
func TestSectionsOfTheSet(t *testing.T) {
	s := handLoom(t)
	said := func(out Sheet) (all []string) {
		for _, e := range out.Pages.Contents {
			all = append(all, strings.TrimSpace(e.Section+" "+e.Part)+" "+fmt.Sprint(e.Page))
		}
		return all
	}
	want := []string{"Traveller 1", "Drawing 2", "Kit 3", "Cut list 4", "Made up first 4", "Lay cards 5", "Lay cards T1 5", "Legs 5",
		"Splices 5", "Threading 6", "Crimping 6", "Crimping P1 6", "Crimping LOG1 7", "Crimping others 7",
		"Electrical tests 7", "Spares and loops 8", "As built, serial 1 8"}
	if got := said(made(t, s)); !slices.Equal(got, want) {
		t.Errorf("%q, want %q", got, want)
	}
	last := words(string(made(t, s).Pages.Pages[7].HTML))
	if !strings.Contains(last, "Made from file demo.toml, sha256 0123456789ab, harness ") || !strings.Contains(last,
		", the program's own, ") || !strings.HasSuffix(last, ".") {
		t.Errorf("%s", last)
	}
	text := ""
	for _, p := range made(t, s).Pages.Pages {
		text += words(string(p.HTML)) + " "
	}
	if n := strings.Count(text, "Tube pieces: sheath, where no other word stands"); n != 1 {
		t.Errorf("pieces of tube are listed %d times", n)
	}
	at := 0
	for _, hold := range []string{"HOLD, sign page 1: ring out bare.", "HOLD, sign page 1: ring out pinned.",
		"HOLD, sign page 1: trial fit.", "HOLD, sign page 1: loaded drop."} { // each once, in this order
		if n := strings.Index(text, hold); n < at || strings.Count(text, hold) != 1 {
			t.Errorf("%q stands at %d, behind %d", hold, n, at)
		} else {
			at = n
		}
	}
	out, err := Make(s, Meta{On: "2026-05-11", Unsaved: true, Shop: "shop", Add: Add{Loads: true, Flags: true, Loops: true}})
	if err != nil {
		t.Fatal(err)
	}
	more := said(out)[len(want):]
	for k := range more {
		more[k] = more[k][:strings.LastIndex(more[k], " ")]
	}
	m := makerOf(s)
	if by := []string{m.loads().Title, m.feeds().Title, m.flags().Title, m.loops().Title}; !slices.Equal(more, by) {
		t.Errorf("added %q, want %q", more, by)
	}
	for k, p := range out.Pages.Pages {
		if strings.Contains(p.Name, m.flags().Title) && (k != len(out.Pages.Pages)-2 || !strings.HasPrefix(p.Name, m.flags().Title)) {
			t.Errorf("page %d is %s", k+1, p.Name)
		}
	}
	html := string(out.HTML)
	if strings.Count(html, "PRINTED FROM UNSAVED CHANGES  ·  2026-05-11") != len(out.Pages.Pages) || !strings.Contains(words(html),
		"Made from file PRINTED FROM UNSAVED CHANGES: no file holds this, harness ") ||
		!strings.Contains(words(html), "the program's own, then shop, ") {
		t.Error("it does not say that it was not saved, or by which catalogues")
	}
}

// What was measured, by hand: of a centre that is built up before and after; the mean of the readings; a dash where the sheet has nothing.
func TestReadingsByHand(t *testing.T) {
	h := &model.Harness{Branches: []model.Branch{{ID: "T1"}}}
	s := &sheet.Sheet{H: h, Index: model.NewIndex(h), Branches: []sheet.Branch{{Layers: []sheet.Layer{{OverMM: 3.5, BuiltMM: 0.25},
		{OverMM: 5.44}}}}}
	s.Branches[0].Sheath.Verdict.OverMM = 7.2
	m := makerOf(s)
	mm := unit.MM
	row := func(r builtRow) string {
		return strings.Join([]string{r.what, r.where, r.sheet, r.measured, r.mean, r.says}, "|")
	}
	read := func(branch string, layer int, bare, over []unit.Millimetre, turn float64) string {
		r := model.Reading{Branch: branch, Layer: layer, BareMM: bare, OverMM: over}
		if turn > 0 {
			r.LayMM = model.Some(unit.Millimetre(turn))
		}
		var all []string
		for _, x := range m.readingRows(r) {
			all = append(all, row(x))
		}
		return strings.Join(all, " ")
	}
	of := func(v ...unit.Millimetre) []unit.Millimetre { return v }
	bare := mm.Diameter(s.Branches[0].Layers[0].BareMM())
	for _, c := range []struct{ got, want string }{
		{read("T1", 1, nil, of(5.4, 5.5), 0), "over|T1 layer 1|" + mm.Diameter(5.44) + "|" + mm.Fine(5.4) + ", " + mm.Fine(5.5) + "|" +
			mm.Fine(5.45) + "|"},
		{read("T1", 0, of(3), nil, 0), "over, before the tape|T1 the centre|" + bare + "|" + mm.Fine(3) + "|" + mm.Fine(3) + "|"},
		{read("T1", 0, of(3), of(3.5), 64), "over, before the tape|T1 the centre|" + bare + "|" + mm.Fine(3) + "|" + mm.Fine(3) +
			"| over|T1 the centre|" + mm.Diameter(3.5) + "|" + mm.Fine(3.5) + "|" + mm.Fine(3.5) + "|turn 64"},
		{read("T1", 2, nil, nil, 0), "over|T1 layer 2|-||-|"}, {read("none", 1, nil, of(5), 0), "over|none layer 1|-|" + mm.Fine(5) +
			"|" + mm.Fine(5) + "|"}, {read("T1", 0, of(3), nil, 64), "over, before the tape|T1 the centre|" + bare + "|" +
			mm.Fine(3) + "|" + mm.Fine(3) + "| over|T1 the centre|" + mm.Diameter(3.5) + "||-|turn 64"},
	} {
		if c.got != c.want {
			t.Errorf("%s, by hand %s", c.got, c.want)
		}
	}
	used := &model.Build{Used: []model.UsedWire{{Spec: "SPEC", Size: "22", UsedMM: 1200}}}
	if got := m.builtRows(used); len(got) != 1 || row(got[0]) != "wire used|SPEC 22 AWG|-|"+mm.Length(1200)+"||" {
		t.Errorf("%+v", got)
	}
	b := &model.Build{Tubes: []model.Recovered{{Branch: "T1", OverMM: 7.3}, {Branch: "none", OverMM: 1}},
		Again: []model.Again{{End: "P1:A", Times: 2}}, Signed: []model.Signature{{Step: "hold fit", By: "14", At: model.Some("t")}},
		Apart: []model.Deviation{{At: "T1", Says: "c", By: model.Some("14"), On: model.Some("d")}, {At: "L1", Says: "e"}}}
	said := func() (all []string) {
		for _, r := range m.builtRows(b) {
			all = append(all, row(r))
		}
		return all
	}
	rest := []string{"over the sheath|none|-|" + mm.Diameter(1) + "||", "contact made anew|P1:A||2||times", "signed|hold fit||||14  t",
		"deviation|T1||||c  14  d", "deviation|L1||||e"}
	if got, want := said(), append([]string{"over the sheath|T1|-|" + mm.Diameter(7.3) + "||"}, rest...); !slices.Equal(got, want) {
		t.Errorf("%q, by hand %q", got, want)
	}
	s.Branches[0].Sheath.Verdict.Wraps = true
	if got := said()[0]; got != "over the sheath|T1|"+mm.Diameter(7.2)+"|"+mm.Diameter(7.3)+"||" {
		t.Errorf("%s", got)
	}
}

// A serial that the file does not have is told with those it has.
func TestSerialsInWords(t *testing.T) {
	s := &sheet.Sheet{H: &model.Harness{}}
	if got := Serials(s); got != "none" {
		t.Errorf("%q", got)
	}
	s.H.Builds = []model.Build{{Serial: "1"}, {Serial: "A" + escape + "2"}}
	if got := Serials(s); !strings.HasPrefix(got, "1, A") || strings.Contains(got, escape) {
		t.Errorf("%q", got)
	}
	out, conforms, err := Customer(handLoom(t), Meta{Serial: "99"})
	if err == nil || err.Error() != "the file has no serial 99. Its serials: 1" || conforms || out.HTML != nil ||
		errors.Unwrap(err) != nil {
		t.Errorf("%v", err)
	}
	out, conforms, err = Customer(handLoom(t), Meta{On: "2026-05-13", File: "x.toml"})
	if err != nil || conforms || len(out.HTML) == 0 || out.Identity == "" {
		t.Fatalf("%v", err)
	}
	if !strings.Contains(string(out.HTML), "identity "+out.Identity) || !strings.Contains(string(out.HTML), ": set to hand over</title>") {
		t.Error("its pages do not say what they are")
	}
	files := ""
	for _, l := range out.Lists {
		files += l.File + " "
		if l.Sheet != "TR1-LMP-02 rev B, identity "+out.Identity {
			t.Errorf("%s says %q", l.File, l.Sheet)
		}
	}
	if files != "pinout spares repair mass " || len(out.Without) != 0 {
		t.Errorf("%s, without %v", files, out.Without)
	}
	odd, _, err := Customer(handLoom(t), Meta{On: "2026-05-13", File: "x\ny.toml"})
	if err != nil || !strings.Contains(string(odd.HTML), "file x") || strings.Contains(string(odd.HTML), "\ny.toml") {
		t.Errorf("%v: a name of two lines stands on two", err)
	}
	one, _, err := Customer(handLoom(t), Meta{On: "2026-05-13", Serial: "1"})
	if err != nil || one.Identity == out.Identity || one.Lists[0].Sheet != "TR1-LMP-02 rev B, serial 1, identity "+one.Identity {
		t.Errorf("%v %q", err, one.Lists[0].Sheet)
	}
}

// Files of lists, by hand: cells by commas or by semicolons with commas for decimals in figures alone; a formula gets an apostrophe; the
// sheet in every row.
func TestFilesByMarks(t *testing.T) {
	table := list.Table{Head: []string{"a", "b"}, Rows: [][]string{{"1.5", "1.5"}, {"=x", "-2.5"}, {"x,y", "3 mm"}}}
	table.Filed.Head, table.Filed.Rows, table.Filed.Figure = table.Head, table.Rows, []bool{false, true}
	for _, c := range []struct {
		marks Marks
		sheet string
		want  string
	}{
		{RFC4180(), "", "a,b\r\n1.5,1.5\r\n'=x,-2.5\r\n\"x,y\",3 mm\r\n"}, {Continental(), "",
			"a;b\r\n1.5;1,5\r\n'=x;-2,5\r\nx,y;3 mm\r\n"},
		{RFC4180(), "=S", "a,b,build sheet\r\n1.5,1.5,'=S\r\n'=x,-2.5,'=S\r\n\"x,y\",3 mm,'=S\r\n"},
	} {
		table.Sheet = c.sheet
		if got, err := CSVWith(table, c.marks); err != nil || string(got) != c.want {
			t.Errorf("%q, by hand %q", got, c.want)
		}
	}
	if got, err := CSVWith(table, Marks{'"', "."}); err == nil || got != nil {
		t.Errorf("cells are parted by their own quotes: %q", got)
	}
	if got, err := CSV(list.Table{Head: []string{"h"}, Rows: [][]string{{"x\ny"}}}); err != nil || !strings.HasPrefix(string(got),
		"h\r\n") || strings.Count(string(got), "\r\n") != 2 {
		t.Errorf("%q", got)
	}
	for cell, want := range map[string]string{"": "", "-": "-", "+": "+", "-5": "-5", "+1.5": "+1.5", "-5 mm": "'-5 mm", "=1": "'=1",
		"@x": "'@x", "+x": "'+x", "\tx": "'\tx", "a=": "a=", "5": "5"} {
		if got := Harmless(cell); got != want {
			t.Errorf("%q: %q, want %q", cell, got, want)
		}
	}
	if got := regexp.MustCompile(`\s+`).ReplaceAllString(string(safe([]byte("a\nb"+escape+"c<"))), " "); strings.Contains(got, escape) ||
		!strings.HasPrefix(got, "a b") || !strings.HasSuffix(got, "c<") || len(got) <= len("a bc<") {
		t.Errorf("%q", got)
	}
	if got := string(safe([]byte("a\nb"))); got != "a\nb" {
		t.Errorf("%q", got)
	}
}

// escape is the character that commands a terminal.
var escape = string(rune(27))
