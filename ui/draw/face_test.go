package draw_test

import (
	"math"
	"strings"
	"testing"

	"contralay/model/catalogue"
	"contralay/ui/draw"
)

// faces are those of the catalogue, by name.
func faces(t *testing.T) map[string]draw.Face {
	t.Helper()
	c, err := catalogue.Default()
	if err != nil {
		t.Fatal(err)
	}
	out := map[string]draw.Face{}
	for _, id := range c.InsertIDs() {
		f, why := c.Face(id)
		if why != "" {
			continue
		}
		d := draw.Face{Rim: f.Rim}
		for _, p := range f.Places {
			d.Places = append(d.Places, draw.FacePlace{Name: p.Cavity, X: p.X, Y: p.Y})
		}
		out[id] = d
	}
	return out
}

// On every face, at every size: each cavity is there once, as its name, which touches no other and
// stands where the cavity lies, or among the rings. Where it lies is worked out here from the height
// and width that the outermost cavities have on the screen.
func TestFaceShowsEveryCavity(t *testing.T) {
	for id, f := range faces(t) {
		for _, size := range [][2]int{{26, 11}, {32, 13}, {44, 21}, {62, 29}, {120, 58}, {9, 5}, {33, 12}} {
			c := f.Draw(size[0], size[1], draw.Palette{})
			named, rings := map[string][2]float64{}, 0
			for row, line := range c.Lines() {
				if len(line) != size[0] {
					t.Fatalf("%s: a line of %d cells, want %d", id, len(line), size[0])
				}
				for col := 0; col < len(line); {
					end := col
					for end < len(line) && strings.IndexByte(" .+oO", line[end]) < 0 {
						end++
					}
					if end == col {
						rings += strings.Count("+oO", line[col:col+1])
						col++
						continue
					}
					if _, twice := named[line[col:end]]; twice {
						t.Errorf("%s at %v: %s is there twice", id, size, line[col:end])
					}
					if end < len(line) && strings.IndexByte("oO+", line[end]) >= 0 || col > 0 &&
						strings.IndexByte("oO+", line[col-1]) >= 0 {
						t.Errorf("%s at %v: a ring touches %s", id, size, line[col:end])
					}
					named[line[col:end]] = [2]float64{float64(col+(end-col)/2) - float64((size[0]-1)/2),
						float64(row) - float64((size[1]-1)/2)}
					col = end
				}
			}
			if len(named)+len(c.NotShown) != len(f.Places) || rings > len(c.NotShown) || len(c.NotShown) > 0 && rings == 0 {
				t.Errorf("%s at %v: %d names, %d rings, %d without a name; %d cavities", id, size, len(named), rings, len(c.NotShown),
					len(f.Places))
			}
			// One scale for all: columns are half as wide as rows are high.
			scale, most := 0.0, 0.0
			for _, p := range f.Places {
				if at, ok := named[p.Name]; ok && math.Abs(p.X) > most {
					most, scale = math.Abs(p.X), math.Abs(at[0])/math.Abs(p.X)
				}
			}
			for _, p := range f.Places {
				at, ok := named[p.Name]
				if !ok || most < 0.5 {
					continue
				}
				if math.Abs(at[0]-p.X*scale) > 2.6 || math.Abs(at[1]+p.Y*scale/2) > 1.6 {
					t.Errorf("%s at %v: %s stands at %v, want %.1f, %.1f", id, size, p.Name, at, p.X*scale, -p.Y*scale/2)
				}
			}
		}
	}
}

// A terminal of 120×40 has room for every name of the arrangements up to 79 cavities; a small one
// still counts from the first, the last and every tenth.
func TestFaceNames(t *testing.T) {
	for id, f := range faces(t) {
		if n := len(f.Draw(62, 29, draw.Palette{}).NotShown); n > 0 && len(f.Places) <= 79 {
			t.Errorf("%s: %d of %d without a name at 62 x 29", id, n, len(f.Places))
		}
	}
	f := faces(t)["14-35"]
	text := strings.Join(f.Draw(32, 13, draw.Palette{}).Lines(), "\n")
	for _, name := range []string{" 1 ", " 37 ", " 10 ", " 20 ", " 30 "} {
		if !strings.Contains(text, name) {
			t.Errorf("14-35 lacks%s:\n%s", name, text)
		}
	}
}

// 13 cavities as the table of faces has them, line by line from the top, left to right: read off the
// table by hand. One that is too small draws nothing and lists what is missing.
func TestFaceDrawn(t *testing.T) {
	f := faces(t)["10-35"]
	var got []string
	for _, line := range f.Draw(26, 11, draw.Palette{}).Lines() {
		if names := strings.Fields(strings.ReplaceAll(line, ".", " ")); len(names) > 0 {
			got = append(got, strings.Join(names, " "))
		}
	}
	if text := strings.Join(got, " / "); text != "1 / 10 2 / 9 11 3 / 8 13 12 4 / 5 / 7 6" {
		t.Errorf("10-35 is drawn as %s", text)
	}
	if c := f.Draw(8, 4, draw.Palette{}); len(c.NotShown) != 13 || strings.TrimSpace(strings.Join(c.Lines(), "")) != "" {
		t.Errorf("too small: %q", c.Lines())
	}
}

// Larger contacts look larger where their names have no room, and several in one cell are a +.
func TestFaceWithoutNames(t *testing.T) {
	f := draw.Face{Places: []draw.FacePlace{{Name: "100", X: -1}, {Name: "101", X: -0.8, Class: 1}, {Name: "102", X: -0.6},
		{Name: "103", X: 0.9}, {Name: "104", X: 0.91}}}
	if got := strings.TrimSpace(strings.Join(f.Draw(20, 5, draw.Palette{}).Lines(), "")); got != "oOo    +" {
		t.Errorf("%q", got)
	}
}
