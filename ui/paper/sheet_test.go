package paper

import (
	"encoding/csv"
	"encoding/json"
	"encoding/xml"
	"fmt"
	"io"
	"math"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"contralay/calc"
	listsquery "contralay/calc/query/lists"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/unit"
	"contralay/ui/paper/figure"
	"contralay/ui/paper/laycard"
	"contralay/ui/paper/list"
)

// sheets are those of files of testdata, and pages what is made of them: each is worked out once for all tests, none of
// which changes one in place.
var (
	sheets = map[string]*sheet.Sheet{}
	pages  = map[*sheet.Sheet]Sheet{}
)

func sheetFile(t testing.TB, name string) *sheet.Sheet {
	t.Helper()
	if sheets[name] == nil {
		d, err := file.Load("../../testdata/" + name + ".toml")
		if err != nil {
			t.Fatal(err)
		}
		sheets[name] = laid(t, &d.Harness)
	}
	return sheets[name]
}

func laid(t testing.TB, h *model.Harness) *sheet.Sheet {
	t.Helper()
	cat, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	return calc.Complete(h, cat, nil)
}

func made(t testing.TB, s *sheet.Sheet) Sheet {
	t.Helper()
	if out, ok := pages[s]; ok {
		return out
	}
	out, err := Make(s, Meta{On: "2026-05-11", Hash: "sha256 0123456789ab", File: "demo.toml"})
	if err != nil {
		t.Fatal(err)
	}
	pages[s] = out
	return out
}

// Whatever a harness is called, it is text on paper: nothing of it is run, and nothing
// breaks the page. The page is read by a parser of XML that knows nothing of it.
func TestEveryStringIsText(t *testing.T) {
	const evil = `<script>alert(1)</script>"'&</style><svg onload=x>`
	s := sheetFile(t, "demo")
	h := *s.H
	h.Head.Name, h.Head.Number, h.Head.Revision, h.Head.Note = model.Some(evil), model.Some(evil), model.Some(evil), model.Some(evil)
	n := &h
	for i := range n.Branches {
		n = n.EditBranch(i, func(b *model.Branch) { b.Name = model.Some(evil) })
	}
	for i := range n.Wires {
		n = n.EditWire(i, func(w *model.Wire) { w.Signal, w.Colour, w.Note = model.Some(evil), model.Some(evil), model.Some(evil) })
	}
	for i := range n.Terminations {
		n = n.EditTermination(i, func(x *model.Termination) {
			x.Name, x.Device, x.Boot, x.Key = model.Some(evil), model.Some(evil), model.Some(evil), model.Some(evil)
		})
	}
	n = n.EditBuild("<b>1", func(b *model.Build) { b.Apart = []model.Deviation{{At: evil, Says: evil}} })
	page := string(made(t, laid(t, n)).HTML)
	for _, bad := range []string{"<script", "onload=x>", "</style><svg"} {
		if strings.Contains(page, bad) {
			t.Errorf("the page holds %q", bad)
		}
	}
	if !strings.Contains(page, "&lt;script&gt;alert(1)&lt;/script&gt;") {
		t.Error("the name is not on the page as text")
	}
	for _, svg := range regexp.MustCompile(`(?s)<svg.*?</svg>`).FindAllString(page, -1) {
		for d := xml.NewDecoder(strings.NewReader(svg)); ; {
			if _, err := d.Token(); err == io.EOF {
				break
			} else if err != nil {
				t.Fatalf("a drawing is no XML: %v\n%s", err, svg)
			}
		}
	}
}

// A page holds all it needs: no script, no other file, no network.
func TestPageIsWhole(t *testing.T) {
	page := string(made(t, sheetFile(t, "demo")).HTML)
	page = strings.ReplaceAll(page, "src:url(data:font/ttf;base64,", "") // the face is in it
	for _, bad := range []string{"<script", "src=", "href=", "url(", "@import", "<link"} {
		if strings.Contains(page, bad) {
			t.Errorf("the page has %q", bad)
		}
	}
	if tags := regexp.MustCompile(`</?table|</?tr|</?td`).FindAllString(page, -1); len(tags) == 0 {
		t.Error("no tables")
	}
	for _, tag := range []string{"table", "tr", "section", "div", "svg", "ul", "h2", "h3"} {
		if open, shut := len(regexp.MustCompile("<"+tag+"[ >]").FindAllString(page, -1)), strings.Count(page, "</"+tag+">"); open != shut {
			t.Errorf("%d <%s> and %d </%s>", open, tag, shut, tag)
		}
	}
}

// A sheet made from work that no file holds says so at the foot of every page and where it says what
// it was made from.
func TestUnsavedSaysSo(t *testing.T) {
	out, err := Make(sheetFile(t, "demo"), Meta{On: "2026-05-11", Unsaved: true})
	if err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(string(out.HTML), "PRINTED FROM UNSAVED CHANGES"); n != len(out.Pages.Pages)+1 {
		t.Errorf("said %d times on %d pages", n, len(out.Pages.Pages))
	}
	if strings.Contains(string(made(t, sheetFile(t, "demo")).HTML), "UNSAVED") {
		t.Error("a saved one says it too")
	}
}

// What stands on paper is what figures gives, to the last digit that is shown.
func TestPaperIsFigures(t *testing.T) {
	for _, name := range []string{"demo", "whole", "feeds", "example"} {
		s := sheetFile(t, name)
		raw, err := figure.All(s)
		if err != nil {
			t.Fatal(err)
		}
		var fig struct {
			Branches []struct {
				ID     string
				OverMM *float64 `json:"over_mm"`
				Least  *float64 `json:"over_min_mm"`
				Most   *float64 `json:"over_max_mm"`
				Layers []struct {
					Members []string
					OverMM  float64  `json:"over_mm"`
					LayMM   *float64 `json:"lay_mm"`
					Turns   *float64
					Hand    model.Hand
				}
				Bend *struct {
					MinMM float64 `json:"min_mm"`
				}
				Sheath *struct {
					Part  *string
					CutMM *float64 `json:"cut_mm"`
					Over  *float64 `json:"over_mm"`
				}
			}
			Wires []struct {
				ID       string
				Cut      *float64 `json:"cut_mm"`
				Finished *float64 `json:"finished_mm"`
				Limit    *float64 `json:"limit_a"`
				Hottest  *float64 `json:"hottest_c"`
			}
			Terminations []struct {
				ID                           string
				Used, Spare, Reserved, Blank int
			}
		}
		if err := json.Unmarshal(raw, &fig); err != nil {
			t.Fatal(err)
		}
		out := made(t, s)
		lists := map[string]list.Table{}
		for _, l := range out.Lists {
			lists[l.File] = l
		}
		n := 0
		same := func(what, cell string, v *float64, digits int) {
			t.Helper()
			n++
			cell = strings.TrimSuffix(cell, "~")
			if v == nil {
				if cell != "-" {
					t.Errorf("%s %s: paper has %q and figures nothing", name, what, cell)
				}
				return
			}
			got, err := strconv.ParseFloat(cell, 64)
			// Half of the last digit, and what figures rounds away itself.
			if err != nil || math.Abs(got-*v) > 0.5*math.Pow(10, -float64(digits))+1e-3 {
				t.Errorf("%s %s: paper has %q, figures %v", name, what, cell, *v)
			}
		}
		for i, b := range fig.Branches {
			row := lists["branches"].Rows[i]
			if row[0] != b.ID {
				t.Fatalf("%s is %s", row[0], b.ID)
			}
			if b.OverMM != nil {
				parts := regexp.MustCompile(`[0-9.]+`).FindAllString(row[7], 3)
				for k, v := range []*float64{b.OverMM, b.Least, b.Most} {
					same(b.ID+" over", parts[k], v, 1)
				}
				same(b.ID+" bend", row[9], &b.Bend.MinMM, 0)
			}
			c := laycard.CardOf(list.MakerOf(s), i)
			for k, l := range b.Layers {
				cl := c.Layers[k]
				if string(cl.Hand) != string(l.Hand) && l.LayMM != nil || len(cl.Rows) != len(l.Members) {
					t.Errorf("%s layer %d: %s %d, figures %s %d", b.ID, k, cl.Hand, len(cl.Rows), l.Hand, len(l.Members))
				}
				var here, there []string
				for j, id := range l.Members {
					here, there = append(here, cl.Rows[j].ID), append(there, id)
				}
				if k == 0 { // the centre stands in the order in which it lies
					slices.Sort(here)
					slices.Sort(there)
				}
				if !slices.Equal(here, there) {
					t.Errorf("%s layer %d: %v, figures %v", b.ID, k, here, there)
				}
				same(fmt.Sprint(b.ID, " layer ", k, " over"), cl.OD, &l.OverMM, 1)
				if l.LayMM != nil {
					near5 := math.Round(*l.LayMM/5) * 5
					same(fmt.Sprint(b.ID, " layer ", k, " turn"), unit.Fixed(cl.LayMM, 0), &near5, 0)
					same(fmt.Sprint(b.ID, " layer ", k, " turns"), cl.Turns, l.Turns, 1)
				}
			}
			if b.Sheath != nil && b.Sheath.Part != nil && b.Sheath.CutMM != nil {
				for _, r := range c.Covers {
					if r.What == "sheath" && r.Part == *b.Sheath.Part {
						same(b.ID+" sheath cut", r.Cut, b.Sheath.CutMM, 0)
						same(b.ID+" sheath over", r.OD, b.Sheath.Over, 1)
					}
				}
			}
		}
		cut := map[string][]string{}
		for _, r := range lists["cut-list"].Rows {
			cut[r[1]] = r
		}
		load := map[string][]string{}
		for _, r := range lists["loads"].Rows {
			load[r[0]] = r
		}
		for _, w := range fig.Wires {
			if r, ok := cut[w.ID]; ok {
				same(w.ID+" cut", r[2], w.Cut, 0)
				same(w.ID+" finished", r[3], w.Finished, 0)
			} else if w.Cut != nil && *w.Cut > 0 {
				t.Errorf("%s is on no cut list", w.ID)
			}
			if r, ok := load[w.ID]; ok {
				same(w.ID+" may carry", r[5], w.Limit, 1)
				same(w.ID+" hottest", r[7], w.Hottest, 0)
			}
		}
		for i, e := range fig.Terminations {
			r := lists["ends"].Rows[i]
			if got := strings.Join(r[9:13], " "); got != fmt.Sprint(e.Used, e.Spare, e.Reserved, e.Blank) {
				t.Errorf("%s: %s, figures %v", e.ID, got, e)
			}
		}
		if n < 10 {
			t.Errorf("%s: only %d figures compared", name, n)
		}
	}
}

// A list is read back by another reader of RFC 4180 as it was, but for the apostrophe
// before what would run as a formula; its lines end in CRLF.
func TestCSV(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		cell := rapid.OneOf(rapid.StringMatching(`[=+\-@\t]?[a-zé,";0-9 .]{0,8}`), rapid.StringMatching(`-?[0-9]{1,3}(\.[0-9])?`))
		tab := list.Table{Head: []string{"a", "b", "c"}}
		for range rapid.IntRange(0, 4).Draw(t, "rows") {
			tab.Add(cell.Draw(t, "a"), cell.Draw(t, "b"), cell.Draw(t, "c"))
		}
		text, err := CSV(tab)
		if err != nil {
			t.Fatal(err)
		}
		if n := strings.Count(string(text), "\n"); n != strings.Count(string(text), "\r\n") {
			t.Fatalf("a line does not end in CRLF: %q", text)
		}
		back, err := csv.NewReader(strings.NewReader(string(text))).ReadAll()
		if err != nil {
			t.Fatal(err)
		}
		for k, r := range tab.Rows {
			for j, c := range r {
				got := back[k+1][j]
				c = strings.ReplaceAll(c, "\t", " ") // a cell is one line
				if got != c && got != "'"+c {
					t.Fatalf("%q came back as %q", c, got)
				}
				if _, err := strconv.ParseFloat(got, 64); err != nil && got != "" && got != "-" && got != "+" &&
					strings.ContainsRune("=+-@\t\r", rune(got[0])) {
					t.Fatalf("%q would run", got)
				}
			}
		}
	})
	for cell, want := range map[string]string{"=1+1": "'=1+1", "+A1": "'+A1", "-3": "-3", "-3.5": "-3.5", "+5": "+5", "@x": "'@x",
		"\tx": "'\tx", "-": "-", "+": "+", "--": "'--", "-2+3": "'-2+3", "-1e5": "'-1e5", "x=1": "x=1", "": ""} {
		if got := Harmless(cell); got != want {
			t.Errorf("%q: %q, want %q", cell, got, want)
		}
	}
}

// Every wire rings from both of its ends, and what one end says of the other the other
// says back, with the same copper.
func TestRingOutIsSymmetric(t *testing.T) {
	for _, name := range []string{"demo", "whole", "feeds"} {
		s := sheetFile(t, name)
		ohm := map[string]float64{}
		for _, r := range listsquery.RingOut(s) {
			for _, to := range r.To {
				ohm[s.H.Terminations[r.Termination].ID+":"+r.Cavity+" "+to.End] = float64(to.Ohm.V)
			}
		}
		for pair, v := range ohm {
			a, z, _ := strings.Cut(pair, " ")
			if strings.HasPrefix(z, "shield") {
				continue
			}
			if back, ok := ohm[z+" "+a]; !ok || math.Abs(back-v) > 1e-12 {
				t.Errorf("%s: %s %v, and back %v %v", name, pair, v, ok, back)
			}
		}
		for k := range s.H.Wires {
			w := &s.H.Wires[k]
			if strings.Contains(w.From.V, ":") && strings.Contains(w.To.V, ":") {
				v, ok := ohm[w.From.V+" "+w.To.V]
				// A wire alone: its published ohm per km times its finished length.
				if want := float64(s.Wires[k].Entry.OhmPerKm) * float64(s.Wires[k].Finished) / 1e6; !ok || math.Abs(v-want) > 1e-9 {
					t.Errorf("%s: wire %s rings %v %v, want %v", name, w.ID, ok, v, want)
				}
			}
		}
	}
}

// The bill counts what the other lists have.
func TestBill(t *testing.T) {
	s := sheetFile(t, "demo")
	need := map[string]float64{}
	for _, r := range listsquery.Bill(s) {
		if r.Order+1e-9 < r.Need && !strings.Contains(r.Says, "shelf") {
			t.Errorf("%s %s: %v needed and %v ordered", r.Group, r.Part, r.Need, r.Order)
		}
		need[r.Group] += r.Need
	}
	wire := 0.0
	for _, r := range listsquery.SpoolList(s) {
		wire += math.Ceil(float64(r.NeedMM)/100-1e-9) / 10
	}
	sheath, parts := 0.0, map[string]bool{}
	for i := range s.Branches {
		sheath += float64(s.Branches[i].Sheath.CutMM) / 1000
		if sh := &s.Branches[i].Sheath; sh.CutMM > 0 {
			parts[sh.Part] = true
		}
	}
	contacts := 0
	for i := range s.Terms {
		for _, c := range s.Terms[i].State {
			if c.Size != "" && (len(c.Wires) > 0 || c.Drain != "" || s.Terms[i].Sealed) {
				contacts++
			}
		}
	}
	boots := 0
	for i := range s.H.Terminations {
		if s.H.Terminations[i].Boot.V != "" {
			boots++
		}
	}
	// each part is rounded up to a tenth of a metre
	if math.Abs(need["wire"]-wire) > 1e-9 || need["sheath"] < sheath-1e-9 || need["sheath"] > sheath+0.1*float64(len(parts)) ||
		int(need["contact"]) != contacts || contacts == 0 || int(need["boot"]) != boots || int(need["wire flag"]) != 2*len(s.H.Wires) ||
		int(need["splice"]) != len(s.H.Splices) {
		t.Errorf("%v; wire %v, sheath %v, contacts %d, boots %d", need, wire, sheath, contacts, boots)
	}
}

// BenchmarkMake is the whole sheet of the demonstration, from the harness worked out.
func BenchmarkMake(b *testing.B) {
	for _, name := range []string{"demo", "whole"} {
		s := sheetFile(b, name)
		b.Run(name, func(b *testing.B) {
			for range b.N {
				if _, err := Make(s, Meta{}); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
