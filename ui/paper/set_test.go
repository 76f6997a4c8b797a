package paper

import (
	"html"
	"regexp"
	"slices"
	"strconv"
	"strings"
	"testing"

	"contralay/calc/calctest"
	"contralay/ui/paper/set"
)

// harnesses are those that sets are printed of in tests.
var harnesses = []string{"demo", "whole", "feeds", "example", "trunk", "every-key", "built-up"}

var (
	tag      = regexp.MustCompile(`<[^>]*>`)
	inPoints = regexp.MustCompile(`([0-9.]+)pt`)
	inSVG    = regexp.MustCompile(`font-size="([0-9.]+)"`)
)

// words is what a page says, without its tags.
func words(page string) string {
	return strings.Join(strings.Fields(html.UnescapeString(tag.ReplaceAllString(page, " "))), " ")
}

// The shop's set is no longer than a shop takes with it.
func TestPagesOfTheSet(t *testing.T) {
	for name, most := range map[string]int{"demo": 14, "whole": 42} {
		out := made(t, sheetFile(t, name))
		if n := len(out.Pages.Pages); n > most {
			t.Errorf("%s takes %d pages, %d at most", name, n, most)
		}
	}
}

// Nothing on any page had to be made smaller, no letter is smaller than 9 points, and each page holds
// no more than there is room for.
func TestNothingIsTooSmall(t *testing.T) {
	for _, name := range harnesses {
		out := made(t, sheetFile(t, name))
		if len(out.Pages.Squeezed) > 0 {
			t.Errorf("%s: %q", name, out.Pages.Squeezed)
		}
		_, rest, _ := strings.Cut(string(out.HTML), "<style>")
		style, body, _ := strings.Cut(rest, "</style>")
		for _, m := range inPoints.FindAllStringSubmatch(style[strings.LastIndex(style, "base64"):], -1) {
			if v, err := strconv.ParseFloat(m[1], 64); err == nil && v < 9 {
				t.Errorf("%s: %s", name, m[0])
			}
		}
		for _, m := range inSVG.FindAllStringSubmatch(body, -1) {
			if v, _ := strconv.ParseFloat(m[1], 64); v < 9*25.4/72 && scaleOf(body, m[0]) {
				t.Errorf("%s: a picture has letters of %v mm", name, v)
				break
			}
		}
	}
}

// scaleOf reports whether a picture is drawn in mm of the page: its size and its view box agree.
func scaleOf(body, of string) bool {
	before := body[:strings.Index(body, of)]
	svg := before[strings.LastIndex(before, "<svg"):]
	m := regexp.MustCompile(`width="([0-9.]+)mm"[^>]*viewBox="0 0 ([0-9.]+)`).FindStringSubmatch(svg)
	return m != nil && m[1] == m[2]
}

// The contents names each section with the page that it begins on, and the step of the flow that is done
// from it has the same page.
func TestContentsAreRight(t *testing.T) {
	for _, name := range harnesses {
		out := made(t, sheetFile(t, name))
		sheets := strings.Split(string(out.HTML), `<section class="page">`)[1:]
		begins := map[string]int{}
		for k, text := range sheets {
			for _, m := range regexp.MustCompile(`<h2[^>]*>([^<]*)</h2>`).FindAllStringSubmatch(text, -1) {
				for _, said := range strings.Split(html.UnescapeString(m[1]), "; ") {
					for _, e := range out.Pages.Contents { // the head of a page names the parts on it too
						is := said == e.Section || strings.HasPrefix(said, e.Section+" ") && strings.Contains(m[0], "p14b\"")
						if is && begins[e.Section] == 0 {
							begins[e.Section] = k + 1
						}
					}
				}
			}
		}
		first := words(sheets[0])
		for section, at := range begins {
			if section == set.TravellerName {
				continue // the page itself
			}
			pattern := regexp.QuoteMeta(section) + `(: [^0-9]*\S* … \S+|: [^…]*?)?\s+` + strconv.Itoa(at) + `(–\d+)?\s`
			if !regexp.MustCompile(pattern).MatchString(first) {
				t.Errorf("%s: %s begins on page %d; the contents do not say so", name, section, at)
			}
		}
		for _, e := range out.Pages.Contents {
			if e.Part == "" && e.Section != set.TravellerName && begins[e.Section] != e.Page {
				t.Errorf("%s: %s is on page %d, the contents have %d", name, e.Section, begins[e.Section], e.Page)
			}
		}
	}
}

// Everything of the file is on some page: each wire, branch, splice, end, unit, cover and label.
func TestEverythingIsOnPaper(t *testing.T) {
	for _, name := range harnesses {
		s := sheetFile(t, name)
		said := map[string]bool{}
		for _, w := range strings.FieldsFunc(words(string(made(t, s).HTML)), func(r rune) bool {
			return strings.ContainsRune(" \n\t,;()", r)
		}) {
			said[strings.Trim(w, ".:")] = true
		}
		want := func(what string, ids ...string) {
			for _, id := range ids {
				for _, part := range strings.Fields(id) {
					if !said[strings.Trim(part, ".:,;()")] {
						t.Errorf("%s: %s %q is on no page", name, what, id)
					}
				}
			}
		}
		for k := range s.H.Wires {
			want("wire", s.H.Wires[k].ID)
		}
		for k := range s.H.Units {
			want("unit", s.H.Units[k].ID)
		}
		for k := range s.H.Splices {
			want("splice", s.H.Splices[k].ID)
		}
		for k := range s.H.Terminations {
			want("end", s.H.Terminations[k].ID)
			for c, state := range s.Terms[k].State {
				if len(state.Wires) > 0 { // those without are told from one to another
					want("cavity", c)
				}
			}
		}
		for k := range s.H.Branches {
			want("branch", s.H.Branches[k].ID)
			want("sheath", s.Branches[k].Sheath.Part)
			for _, c := range s.Branches[k].Covers {
				want("cover", c.Part)
			}
		}
	}
}

// marks are those within the text of a cell.
var marks = strings.NewReplacer("<br>", "\n", "<u>", "", "</u>", "")

// cells are the rows of the tables of a section, as texts.
func cells(out Sheet, section string) [][]string {
	var rows [][]string
	for _, p := range out.Pages.Pages {
		text := string(p.HTML)
		at := strings.Index(text, ">"+section+"</h2>")
		if at < 0 && !strings.HasPrefix(p.Name, section) {
			continue
		}
		if at >= 0 {
			text = text[at:]
		}
		if end := strings.Index(text[min(4, len(text)):], "<h2"); end > 0 {
			text = text[:end]
		}
		for _, row := range regexp.MustCompile(`(?s)<tr[^>]*>(.*?)</tr>`).FindAllStringSubmatch(text, -1) {
			var one []string
			for _, c := range regexp.MustCompile(`(?s)<td[^>]*>(.*?)</td>`).FindAllStringSubmatch(row[1], -1) {
				one = append(one, html.UnescapeString(marks.Replace(c[1])))
			}
			rows = append(rows, one)
		}
	}
	return rows
}

// Each wire is on the cut list exactly once, in a batch of as many wires as are named there, with both of its
// ends; what has come off a spool is the sum of what was cut off it.
func TestCutListHoldsEachWireOnce(t *testing.T) {
	for _, name := range harnesses {
		s := sheetFile(t, name)
		seen := map[string]int{}
		each, left := "", 0 // of the batch that a row belongs to
		for _, row := range cells(made(t, s), set.CutName) {
			if len(row) != 7 {
				continue
			}
			id, _, _ := strings.Cut(row[0], "\u00a0")
			i, ok := s.Index.Wire[id]
			if !ok {
				t.Errorf("%s: there is no wire %q", name, id)
				continue
			}
			seen[id]++
			if row[1] != "" {
				if left != 0 {
					t.Errorf("%s: a batch before %s lacks %d wires", name, id, left)
				}
				left, each = 1, row[1]
				if n, one, several := strings.Cut(each, "\u00a0×\u00a0"); several {
					left, _ = strconv.Atoi(n)
					each = one
				}
			}
			left--
			if got, err := strconv.ParseFloat(each, 64); err != nil || got != float64(s.Wires[i].Cut) {
				t.Errorf("%s: %s is cut to %s, want %v", name, id, each, s.Wires[i].Cut)
			}
			w := &s.H.Wires[i]
			if w.From.V != "" && row[3] != w.From.V || w.To.V != "" && row[4] != w.To.V {
				t.Errorf("%s: the flags of %s say %q and %q", name, id, row[3], row[4])
			}
		}
		for k := range s.Wires {
			if id := s.H.Wires[k].ID; seen[id] != calctest.Once(s.Wires[k].Cut > 0) {
				t.Errorf("%s: wire %s is on the cut list %d times", name, id, seen[id])
			}
		}
	}
}

// The running total of a spool, its wires by hand from the file: 1,690 and 410 mm.
func TestOffTheSpool(t *testing.T) {
	s := sheetFile(t, "demo")
	off := map[string]float64{}
	for _, b := range set.Batches(makerOf(s).Maker) {
		key := b.Spec + b.Size + b.Colour
		off[key] += float64(b.CutMM) * float64(len(b.Wires))
		if float64(b.TotalMM) != off[key] {
			t.Errorf("%s: %v off the spool, want %v", key, b.TotalMM, off[key])
		}
	}
	sum := 0.0
	for _, v := range off {
		sum += v
	}
	if want := float64(s.Totals.WireMM); sum != want {
		t.Errorf("%v off all spools, the loom takes %v", sum, want)
	}
}

// Pages that are not printed by default are there when they are asked for, and only those.
func TestAddedPages(t *testing.T) {
	s := sheetFile(t, "demo")
	for _, c := range []struct {
		add  Add
		want []string
	}{
		{Add{}, nil},
		{Add{Loads: true}, []string{"Loads and loaded drop"}},
		{Add{Flags: true}, []string{"Wire flags"}},
		{Add{Loops: true}, []string{"Loop ledger"}},
		{Add{true, true, true}, []string{"Loads and loaded drop", "Wire flags", "Loop ledger"}},
	} {
		out, err := Make(s, Meta{Add: c.add})
		if err != nil {
			t.Fatal(err)
		}
		var got []string
		for _, e := range out.Pages.Contents {
			if slices.Contains([]string{"Loads and loaded drop", "Wire flags", "Loop ledger"}, e.Section) {
				got = append(got, e.Section)
			}
		}
		if !slices.Equal(got, c.want) {
			t.Errorf("%+v: %q", c.add, got)
		}
	}
}

// Each hold stands where it is met, and in the order of work on the first page, in the order of the run.
func TestHoldsAreMet(t *testing.T) {
	out := made(t, sheetFile(t, "demo"))
	var rest strings.Builder
	for _, p := range out.Pages.Pages[1:] {
		rest.WriteString(words(string(p.HTML)))
	}
	first, at := words(string(out.Pages.Pages[0].HTML)), -1
	for _, name := range []string{"ring out bare", "ring out pinned", "trial fit", "loaded drop"} {
		now := strings.Index(first, "HOLD: "+name)
		if now < at || now < 0 {
			t.Errorf("%s is not on the first page after the hold before it", name)
		}
		at = now
		if n := strings.Count(rest.String(), "HOLD, sign page 1: "+name+". "); n != 1 {
			t.Errorf("%s is met %d times", name, n)
		}
	}
}

// Each step that is done from a place within a section points to the page with that place.
func TestStepsPointToTheirPlaces(t *testing.T) {
	for _, name := range []string{"demo", "whole"} {
		out := made(t, sheetFile(t, name))
		first := words(string(out.Pages.Pages[0].HTML))
		for step, place := range map[string]string{"HOLD: ring out bare": "Ring-out", "HOLD: ring out pinned": "Ring-out",
			"Test isolation, devices off": "Isolation", "HOLD: trial fit": "HOLD, sign page 1: trial fit.",
			"HOLD: loaded drop": "Loaded drop"} {
			m := regexp.MustCompile(regexp.QuoteMeta(step) + ` (\d+)`).FindStringSubmatch(first)
			if m == nil {
				t.Errorf("%s: %q has no page", name, step)
				continue
			}
			n, _ := strconv.Atoi(m[1])
			if text := string(out.Pages.Pages[n-1].HTML); !strings.Contains(text, ">"+place) {
				t.Errorf("%s: %q is sent to page %d, which has no %q", name, step, n, place)
			}
		}
	}
}

// A serial that is given stands at the head of every page; one that is not leaves room for it.
func TestSerial(t *testing.T) {
	out, err := Make(sheetFile(t, "demo"), Meta{Serial: "007"})
	if err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(string(out.HTML), `<span class="p12b value">007</span>`); n != len(out.Pages.Pages) {
		t.Errorf("on %d of %d pages", n, len(out.Pages.Pages))
	}
}
