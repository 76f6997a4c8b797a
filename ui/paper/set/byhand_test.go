package set_test

import (
	"html"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
	"contralay/model/file"
	"contralay/ui/paper/list"
	"contralay/ui/paper/page"
	"contralay/ui/paper/set"
)

// handLoom is the small loom whose lists were worked out by hand.
func handLoom(t *testing.T) list.Maker {
	t.Helper()
	d, err := file.Load("../testdata/byhand.toml")
	if err != nil {
		t.Fatal(err)
	}
	return list.MakerOf(calc.Complete(&d.Harness, calctest.Catalogue(t), nil))
}

// handMade is the rows of a list that was worked out by hand, each as a map from its columns.
func handMade(t *testing.T, name string) (out []map[string]string) {
	t.Helper()
	text, err := os.ReadFile("../testdata/byhand.txt")
	if err != nil {
		t.Fatal(err)
	}
	_, block, ok := strings.Cut(string(text), "== "+name+"\n")
	if !ok {
		t.Fatalf("nobody worked out %s by hand", name)
	}
	block, _, _ = strings.Cut(block, "\n== ")
	var head []string
	for line := range strings.Lines(block) {
		line = strings.TrimSpace(line)
		if line == "" || strings.HasPrefix(line, "#") {
			continue
		}
		var cells []string
		for cell := range strings.SplitSeq(line, "|") {
			cells = append(cells, strings.TrimSpace(cell))
		}
		if head == nil {
			head = cells
			continue
		}
		row := map[string]string{}
		for k := range min(len(cells), len(head)) {
			row[head[k]] = cells[k]
		}
		out = append(out, row)
	}
	return out
}

var (
	rowOf  = regexp.MustCompile(`(?s)<tr[^>]*>(.*?)</tr>`)
	cellOf = regexp.MustCompile(`(?s)<td[^>]*>(.*?)</td>`)
	tag    = regexp.MustCompile(`<[^>]*>`)
)

// printed is the rows of the tables of blocks, as they are laid into pages, and all words.
func printed(blocks []page.Block) (rows [][]string, says string) {
	for _, p := range page.Lay(blocks).Pages {
		text := strings.NewReplacer("/<br>", "/", "<br>", " ").Replace(string(p.HTML))
		for _, r := range rowOf.FindAllStringSubmatch(text, -1) {
			var cells []string
			for _, c := range cellOf.FindAllStringSubmatch(r[1], -1) {
				cells = append(cells, html.UnescapeString(tag.ReplaceAllString(c[1], "")))
			}
			rows = append(rows, cells)
		}
		says += html.UnescapeString(tag.ReplaceAllString(text, " ")) + " "
	}
	return rows, strings.Join(strings.Fields(strings.ReplaceAll(says, "\u00a0", " ")), " ")
}

// Every row of the bill by hand is on the kit once: wire by its spools in their order with the metres that the loom
// takes; each part with what it needs and what is ordered; what has no part in the words before them.
func TestKitByHand(t *testing.T) {
	rows, says := printed(set.Kit(handLoom(t)))
	var spools [][]string
	for _, r := range rows {
		if len(r) == 3 {
			spools = append(spools, r)
		}
	}
	wires := 0
	for _, want := range handMade(t, "bill") {
		part, open := want["part"], strings.HasPrefix(want["note"], "OPEN: ")
		switch {
		case open:
			if !strings.Contains(says, want["needed"]+" x "+part) {
				t.Errorf("what has no part lacks %s x %s: %s", want["needed"], part, says)
			}
		case want["what"] == "wire":
			colour := want["colour"]
			if wires++; wires > len(spools) || spools[wires-1][0] != colour || spools[wires-1][1] != want["needed"] {
				t.Errorf("spool %d: %q, by hand %q, %s m", wires, spools[min(wires, len(spools))-1], colour, want["needed"])
			}
		default:
			m := ""
			if want["unit"] == "m" {
				m = " m"
			}
			n := 0
			for _, r := range rows {
				named := len(r) == 4 && (r[0] == part || strings.HasPrefix(r[0], part+", ") || // its group is the title above it
					strings.HasPrefix(r[0], want["what"]+" "+part))
				if !named {
					continue
				}
				if n++; strings.TrimSuffix(r[1], "~") != strings.TrimSuffix(want["needed"], "~")+m || r[2] != want["to order"]+m {
					t.Errorf("%q, by hand %s needed, %s ordered%s", r, want["needed"], want["to order"], m)
				}
			}
			if n != 1 {
				t.Errorf("%s %s is there %d times", want["what"], part, n)
			}
		}
	}
	if wires != len(spools) || wires == 0 {
		t.Errorf("%d spools, by hand %d", len(spools), wires)
	}
}

// Each piece of tube by hand is cut once: for its branch, its length.
func TestTubesByHand(t *testing.T) {
	rows, _ := printed(set.Tubes(handLoom(t)))
	var got, want []string
	for _, r := range rows {
		if len(r) == 3 {
			got = append(got, r[0]+" "+r[1])
		}
	}
	for _, r := range handMade(t, "tubes, as a file") {
		want = append(want, r["branch"]+" "+r["cut, mm"])
	}
	slices.Sort(got)
	slices.Sort(want)
	if !slices.Equal(got, want) || len(want) == 0 {
		t.Errorf("%q\nby hand %q", got, want)
	}
}

// Each wire by hand is on the cut list with its length, its colour in words, and the words of its two flags.
func TestCutListByHand(t *testing.T) {
	rows, _ := printed(set.Cut(handLoom(t)))
	got := map[string][]string{}
	for _, r := range rows {
		if len(r) == 7 {
			id, _, _ := strings.Cut(r[0], "\u00a0")
			got[id] = r
		}
	}
	all := handMade(t, "cut-list")
	for _, want := range all {
		_, colour, _ := strings.Cut(want["colour"], "  ")
		from, to := strings.TrimPrefix(want["from"], "splice "), strings.TrimPrefix(want["to"], "splice ")
		r := got[want["wire"]]
		if r == nil || r[1] != want["cut, mm"] || r[2] != colour || r[3] != from || r[4] != to {
			t.Errorf("%s: %q, by hand %s, %s, %s, %s", want["wire"], r, want["cut, mm"], colour, from, to)
		}
	}
	if len(got) != len(all) {
		t.Errorf("%d wires, by hand %d", len(got), len(all))
	}
}

// Each label by hand is on the page of what is threaded on, with its words but for those that all have, and with the size
// of its sleeve at its end.
func TestLabelsByHand(t *testing.T) {
	m := handLoom(t)
	rows, says := printed(set.Threading(m))
	var sizes []string
	for _, r := range rows {
		if len(r) > 4 && r[2] == "label sleeve" {
			sizes = r[3:]
		}
	}
	for k, want := range handMade(t, "labels, as a file") {
		if words := want["text1"] + " " + want["text2"]; !strings.Contains(says, words) {
			t.Errorf("no label reads %s", words)
		}
		if size := strings.TrimPrefix(want["sleeve"], "marker sleeve "); k >= len(sizes) || sizes[k] != size ||
			m.H.Terminations[k].ID != want["end"] {
			t.Errorf("%s takes a sleeve of %s by hand: %q", want["end"], size, sizes)
		}
	}
	if !strings.Contains(says, "Each reads as below, and TR1-LMP-02 B.") {
		t.Error(says)
	}
}

// The loops by hand: 1 of the 2 that P1 is good for was used.
func TestLoopsByHand(t *testing.T) {
	_, says := printed(set.Spares(handLoom(t), list.Table{}, map[string]int{"P1": 1}))
	sentence := regexp.MustCompile(`Loop (\d+) mm, good for (\d+), used so far (\d+), left (\d+): ((?:\S+ \[ \] ?)+)`)
	got := map[string][]string{}
	for _, m := range sentence.FindAllStringSubmatch(says, -1) {
		for end := range strings.SplitSeq(strings.TrimSpace(m[5]), " [ ]") {
			if end = strings.TrimSpace(end); end != "" {
				got[end] = m[1:5]
			}
		}
	}
	for _, want := range handMade(t, "loops, as a file") {
		by := []string{want["loop, mm"], want["good for"], want["used so far"], want["left"]}
		if !slices.Equal(got[want["end"]], by) {
			t.Errorf("%s: %q, by hand %q: %s", want["end"], got[want["end"]], by, says)
		}
	}
}

// What has no number of the shop's own is named once, and not where the shop has one.
func TestUnnumbered(t *testing.T) {
	m := handLoom(t)
	const without = "No part number: boot-straight-12, connector 12-98, connector 8-98, ring M5."
	if _, says := printed(set.Kit(m)); strings.Count(says, without) != 1 {
		t.Error(says)
	}
	h := *m.H
	h.Terminations = slices.Clone(h.Terminations)
	h.Terminations[0].Boot = model.Opt[string]{}
	if _, says := printed(set.Kit(list.MakerOf(calc.Complete(&h, m.S.Base, nil)))); strings.Contains(says, "boot-straight-12") {
		t.Error(says)
	}
}

// Wire whose colour is not given cannot be ordered yet: where that is all of it, no wire is said to be ordered.
func TestNoWireToOrder(t *testing.T) {
	m := handLoom(t)
	h := m.H
	for k := range h.Wires {
		h = h.EditWire(k, func(w *model.Wire) { w.Colour = model.Opt[string]{} })
	}
	_, says := printed(set.Kit(list.MakerOf(calc.Complete(h, m.S.Base, nil))))
	if !strings.Contains(says, "Its colour is not given.") || strings.Contains(says, "Wire to order") {
		t.Error(says)
	}
	// The bill by hand: 1.3 + 0.6; 2.7 + 1.1 + 0.7 + 0.9 + 1.0 + 1.2 + 1.2 + 0.9 + 0.7.
	if _, says := printed(set.Kit(m)); !strings.Contains(says, "Wire to order: AS22759/32 20 AWG 1.9 m, AS22759/32 22 AWG 10.4 m. ") {
		t.Error(says)
	}
}
