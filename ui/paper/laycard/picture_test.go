package laycard_test

import (
	"encoding/xml"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"contralay/calc/sheet"
	"contralay/ui/paper/laycard"
	"contralay/ui/paper/laycard/section/readback"
	"contralay/ui/paper/page"
)

var pictures = regexp.MustCompile(`(?s)<svg[^>]*class="lay".*?</svg>`)

// Read back from the pages of the demonstration and of a whole harness: every piece that has a card has
// its number in the pictures of that branch once, 3.3 mm high at least, inside its disc or outside on a
// leader of its own; no number, position or mark lies on another, and no leader crosses another. Every
// picture is from 60 to 180 mm wide.
func TestPicturesReadBack(t *testing.T) {
	for _, name := range []string{"demo", "whole"} {
		m := load(t, "../../../testdata/"+name+".toml")
		var text strings.Builder
		for _, p := range page.Lay(laycard.Pages(m)).Pages {
			text.WriteString(string(p.HTML))
		}
		numbers := map[string]int{} // branch and piece
		for _, svg := range pictures.FindAllString(text.String(), -1) {
			all := readback.Elements(t, svg)
			branch, _, _ := strings.Cut(all[0].Attr("aria-label"), ",")
			if w := all[0].Num("width"); w < 60 || w > 180 {
				t.Errorf("%s %s: a picture is %.1f mm wide", name, branch, w)
			}
			readback.Sound(failing{t, name + " " + branch}, svg)
			for _, e := range all {
				if e.Class == "number" {
					numbers[branch+" "+e.Of]++
				}
			}
		}
		seen := 0
		for _, c := range laycard.CardsOf(m) {
			if len(c.Layers) == 1 && len(c.Layers[0].Rows) <= 5 {
				continue
			}
			for _, l := range c.Layers {
				for _, r := range l.Rows {
					if r.Kind == sheet.OfFiller {
						continue
					}
					seen++
					if n := numbers[c.ID+" "+r.ID]; n != 1 {
						t.Errorf("%s %s: %s has its number in %d pictures", name, c.ID, r.ID, n)
					}
				}
			}
		}
		if seen != len(numbers) || seen < 100 {
			t.Errorf("%s: %d pieces and %d numbers", name, seen, len(numbers))
		}
	}
}

// failing says of which picture a fault is.
type failing struct {
	t  *testing.T
	of string
}

func (f failing) Helper()                           { f.t.Helper() }
func (f failing) Errorf(format string, args ...any) { f.t.Errorf(f.of+": "+format, args...) }

// The hand of a layer as it is drawn from above, from end at the left: LH goes up on the paper over the
// bundle, which is to the left of whoever looks along it; RH goes down. One lay is as long as it says.
func TestSideByHand(t *testing.T) {
	m := load(t, "../../../testdata/demo.toml")
	text := ""
	for _, p := range page.Lay(laycard.Pages(m)).Pages {
		text += string(p.HTML)
	}
	found := 0
	for _, svg := range regexp.MustCompile(`(?s)<svg[^>]*class="side".*?</svg>`).FindAllString(text, -1) {
		all := readback.Elements(t, svg)
		says := all[0].Attr("aria-label")
		hand, lay := "", 0.0
		if _, err := fmt.Sscanf(strings.ReplaceAll(says, ",", ""), "the bundle from above: %s lay %f mm", &hand, &lay); err != nil {
			hand = says // a small one
		}
		scale := 1.0
		for _, e := range all {
			if _, drawn, is := strings.Cut(e.Text, "(drawn 1:"); is {
				scale, _ = strconv.ParseFloat(strings.TrimSuffix(drawn, ")"), 64)
			}
		}
		for _, e := range all {
			points := regexp.MustCompile(`-?[0-9.]+`).FindAllString(e.Attr("d"), -1)
			at := func(k int) float64 { v, _ := strconv.ParseFloat(points[k], 64); return v }
			switch e.Class {
			case "followed":
				found++
				if up := at(len(points)-1) < at(1); up != (hand == "LH") {
					t.Errorf("%s goes up: %v", says, up)
				}
				if half := (at(len(points)-2) - at(0)) * 2 * scale; lay > 0 && math.Abs(half-lay) > 0.1*scale {
					t.Errorf("%s: one lay is drawn %.1f mm", says, half)
				}
			case "dimension":
				if drawn := (at(3) - at(0)) * scale; lay > 0 && math.Abs(drawn-lay) > 0.1*scale {
					t.Errorf("%s: one lay is marked %.1f mm", says, drawn)
				}
			}
		}
	}
	if found < 15 {
		t.Errorf("only %d layers are drawn from the side", found)
	}
}

// Every page is XML that a reader takes, whatever stands in it.
func TestPagesAreXML(t *testing.T) {
	for _, p := range page.Lay(laycard.Pages(load(t, "../../../testdata/demo.toml"))).Pages {
		if err := xml.Unmarshal([]byte("<p>"+strings.ReplaceAll(string(p.HTML), "<br>", "<br/>")+"</p>"), new(struct{})); err != nil &&
			!strings.Contains(err.Error(), "element <col") {
			t.Error(err)
		}
	}
}
