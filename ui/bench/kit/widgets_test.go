package kit

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/charmbracelet/bubbles/key"
	"github.com/charmbracelet/x/ansi"

	"contralay/ui/draw"
)

func TestBar(t *testing.T) {
	th, plain := NewTheme(draw.Palette{}, false), NewTheme(draw.Palette{}, true)
	for _, tt := range []struct {
		th   *Theme
		w    int
		want string
	}{
		{th, 120, "↑↓ row  ←→ step  + − change  Enter open  ⌫ undo  Esc back  W why  H help"},
		{plain, 120, "^ v row  < > step  + - change  Enter open  Backspace undo  Esc back  W why  H help"},
		{plain, 80, "< > step  + - change  Enter open  Backspace undo  Esc back  W why  H help"},
		{plain, 40, "Enter open  Backspace undo  H help"},
		{plain, 20, "H help"},
		{plain, 6, "H help"},
		{plain, 3, "H ~"},
	} {
		if got := tt.th.Bar(demoKeys(tt.th), tt.w); got != tt.want {
			t.Errorf("%d: %q, want %q", tt.w, got, tt.want)
		}
	}
}

// At every width the bar fits and the help is on it as long as it has room at all.
func TestBarKeepsTheHelp(t *testing.T) {
	for name, p := range palettes() {
		th := NewTheme(p, false)
		for w := 0; w < 100; w++ {
			got := th.Bar(demoKeys(th), w)
			if ansi.StringWidth(got) > w || w >= 6 && !strings.HasSuffix(ansi.Strip(got), "H help") {
				t.Errorf("%s, %d: %q", name, w, got)
			}
		}
	}
}

func TestKeysPage(t *testing.T) {
	th := NewTheme(draw.Palette{}, true)
	got := th.Keys([]key.Binding{NewKey([]string{"enter"}, "Enter", "open the row, or take what it offers"),
		NewKey([]string{"s"}, "S", "save")}, 26)
	want := "Enter open the row, or\n      take what it offers\nS     save"
	if joined(got) != want {
		t.Errorf("%s\nwant\n%s", joined(got), want)
	}
}

func TestScroll(t *testing.T) {
	var lines []string
	for k := range 20 {
		lines = append(lines, fmt.Sprintf("line %d", k+1))
	}
	th := NewTheme(draw.Palette{}, false)
	for _, tt := range []struct {
		keys, first, last string
		says              string
	}{
		{"", "line 1", "↓ 15 more lines", ""},
		{"down", "↑ 2 more lines", "↓ 14 more lines", ""},
		{"up", "line 1", "↓ 15 more lines", "this is the beginning"},
		{"pgdown", "↑ 5 more lines", "↓ 11 more lines", ""},
		{"end", "↑ 15 more lines", "line 20", ""},
		{"end down", "↑ 15 more lines", "line 20", "this is the end"},
		{"end home", "line 1", "↓ 15 more lines", ""},
	} {
		var s Scroll
		s.SetSize(20, 6)
		s.SetLines(lines)
		says := ""
		for _, k := range strings.Fields(tt.keys) {
			moves := false
			if moves, says = s.Press(k); !moves {
				t.Errorf("%q does not move", k)
			}
		}
		got := th.Scroll(&s)
		if len(got) != 6 || strings.TrimSpace(got[0]) != tt.first || strings.TrimSpace(got[5]) != tt.last || says != tt.says {
			t.Errorf("%q: %q … %q, says %q", tt.keys, got[0], got[len(got)-1], says)
		}
	}
	var s Scroll
	s.SetSize(20, 6)
	s.SetLines(lines)
	s.Press("end")
	s.SetSize(20, 30) // a larger window shows it all, from the top
	if got := th.Scroll(&s); strings.TrimSpace(got[0]) != "line 1" || len(got) != 30 {
		t.Errorf("%q", got)
	}
	if moves, _ := s.Press("x"); moves {
		t.Error("x moves")
	}
}

// What is marked as left out and what is shown come to the whole text, at every place.
func TestScrollCounts(t *testing.T) {
	th := NewTheme(draw.Palette{}, true)
	for total := range 30 {
		for h := 3; h < 12; h++ {
			var s Scroll
			s.SetSize(30, h)
			s.SetLines(strings.Split(strings.Repeat("text\n", total), "\n")[:total])
			for range total + 1 {
				n := 0
				for _, line := range th.Scroll(&s) {
					hidden := 0
					if _, err := fmt.Sscanf(line[1:], "%d more", &hidden); err == nil {
						n += hidden
					} else if strings.HasPrefix(line, "text") {
						n++
					}
				}
				if n != total {
					t.Fatalf("%d lines in %d at %d: %d", total, h, s.At(), n)
				}
				s.Press("down")
			}
		}
	}
}

func TestProgress(t *testing.T) {
	plain := NewTheme(draw.Palette{}, true)
	for _, tt := range []struct {
		share float64
		w     int
		want  string
	}{
		{0, 40, "searching ..........   0%  12 of 40"},
		{0.5, 40, "searching #####.....  50%  12 of 40"},
		{0.999, 40, "searching ##########  99%  12 of 40"},
		{1, 40, "searching ########## 100%  12 of 40"},
		{7, 40, "searching ########## 100%  12 of 40"},
		{-1, 40, "searching ..........   0%  12 of 40"},
		{0.5, 28, "searching ######......  50%"},
		{0.5, 16, "searching 50%"},
		{0.5, 8, "searchi~"},
	} {
		got := plain.Progress("searching", tt.share, "12 of 40", tt.w)
		if n := ansi.StringWidth(got); n > tt.w {
			t.Errorf("%d wide: %q", n, got)
		}
		if tt.w == 40 {
			// The bar takes what room there is; its share is what counts.
			full, empty := strings.Count(got, "#"), strings.Count(got, ".")
			want := min(max(tt.share, 0), 1) * float64(full+empty)
			if d := float64(full) - want; full+empty < 6 || d > 0.51 || d < -0.51 { // rounded to whole cells
				t.Errorf("%v: %q", tt.share, got)
			}
			if !strings.HasSuffix(got, strings.TrimLeft(tt.want[21:], " ")) {
				t.Errorf("%v: %q, want the end of %q", tt.share, got, tt.want)
			}
		} else if tt.w < 20 && got != tt.want {
			t.Errorf("%d: %q, want %q", tt.w, got, tt.want)
		}
	}
	if got := NewTheme(draw.NewPalette(draw.TrueColour, true), false).Progress("a", 0.5, "", 40); !strings.Contains(ansi.Strip(got), "█░") {
		t.Errorf("%q", got)
	}
}

// disk is a folder tree in memory.
func disk(folders map[string][]Entry) func(string) ([]Entry, error) {
	return func(folder string) ([]Entry, error) {
		if all, is := folders[folder]; is {
			return all, nil
		}
		return nil, errors.New("no such folder")
	}
}

func TestPicker(t *testing.T) {
	now := time.Date(2026, 6, 3, 12, 0, 0, 0, time.UTC)
	files := map[string][]Entry{
		"/job": {
			{Name: "b.csv", Bytes: 1234, When: now.Add(-time.Hour)}, {Name: "A.CSV", Bytes: 12, When: now.AddDate(0, -1, 0)},
			{Name: "notes.txt"}, {Name: ".hidden.csv"}, {Name: "old", Folder: true}, {Name: "\x1b[31mred\x1b[0m.csv", Bytes: 5e6},
			{Name: "locked", Folder: true},
		},
		"/job/old": {{Name: "c.csv"}},
		"/":        {{Name: "job", Folder: true}},
	}
	of := PickerOf{List: disk(files), Folder: "/job", Ends: []string{".csv"}, Now: now}
	th := NewTheme(draw.Palette{}, true)
	want := `/job
   .. the folder above
   locked/
 > old/
   ^[[31mred^[[0m.csv     5.0 MB
   A.CSV                    12 B  3 May 12:00
   b.csv                  1.2 kB  today 11:00`
	p := OpenPicker(of)
	p.Press("down")
	got := th.Picker(p, 46, 8)
	for k := range got {
		got[k] = strings.TrimRight(got[k], " ")
	}
	if text := strings.TrimRight(joined(got), "\n"); text != want {
		t.Errorf("\n%s\nwant\n%s", text, want)
	}
	for _, tt := range []struct {
		name, keys string
		want       PickerAnswer
		folder     string
	}{
		{"a file", "end enter", PickerAnswer{Path: "/job/b.csv"}, "/job"},
		{"a file in a folder", "down enter enter", PickerAnswer{Path: "/job/old/c.csv"}, "/job/old"},
		{"into a folder and out", "down enter left", PickerAnswer{}, "/job"},
		{"out stands on where it came from", "down enter left enter enter", PickerAnswer{Path: "/job/old/c.csv"}, "/job/old"},
		{"the folder above", "up enter", PickerAnswer{}, "/"},
		{"topmost", "left left", PickerAnswer{Says: "this is the topmost folder"}, "/"},
		{"a folder that cannot be read", "enter", PickerAnswer{Says: "that folder cannot be read: no such folder"}, "/job"},
		{"first", "home up", PickerAnswer{Says: "first row"}, "/job"},
		{"last", "end down", PickerAnswer{Says: "last row"}, "/job"},
		{"Esc", "esc", PickerAnswer{Leaves: true}, "/job"},
		{"right does not take", "end right", PickerAnswer{Says: "Enter takes it"}, "/job"},
	} {
		p := OpenPicker(of)
		var a PickerAnswer
		for _, k := range strings.Fields(tt.keys) {
			a = p.Press(k)
		}
		if a != tt.want || p.Folder != tt.folder {
			t.Errorf("%s: %+v in %s, want %+v in %s", tt.name, a, p.Folder, tt.want, tt.folder)
		}
	}
	of.Folders = true
	p = OpenPicker(of)
	if a := p.Press("home"); a.Path != "" {
		t.Errorf("%+v", a)
	}
	if a := p.Press("enter"); a.Path != "/job" {
		t.Errorf("this folder: %+v", a)
	}
	of.List = nil
	p = OpenPicker(of)
	for _, k := range []string{"up", "down", "end", "pgup", "pgdown", "right"} {
		p.Press(k)
		th.Picker(p, 20, 3)
	}
}

// The choice is exactly h lines of w cells, whatever the size and the names.
func TestPickerFits(t *testing.T) {
	var all []Entry
	for k, name := range append(awkward, strings.Repeat("線", 90)+".csv", "a") {
		all = append(all, Entry{Name: name, Folder: k%3 == 0, Bytes: int64(k) * 1e7, When: time.Unix(1e9, 0)})
	}
	th := NewTheme(draw.NewPalette(draw.Colours16, true), true)
	for w := range 60 {
		for h := range 12 {
			p := OpenPicker(PickerOf{List: func(string) ([]Entry, error) { return all, nil }, Folder: "/a/b"})
			for range 4 {
				p.Press("down")
			}
			got := th.Picker(p, w, h)
			if len(got) != h {
				t.Fatalf("%d×%d: %d lines", w, h, len(got))
			}
			for _, line := range got {
				if n := ansi.StringWidth(line); n != w || draw.Spell(line) != line || !ended(line) {
					t.Fatalf("%d×%d: %d wide, %q", w, h, n, line)
				}
			}
		}
	}
}

func TestNamesAreCounted(t *testing.T) {
	want := []string{"a.csv", "revision 2.csv", "revision 09.csv", "revision 10.csv", "revision 10b.csv", "revision x.csv"}
	var all []Entry
	for k := range want {
		all = append(all, Entry{Name: want[(k*5+2)%len(want)]})
	}
	p := OpenPicker(PickerOf{List: func(string) ([]Entry, error) { return all, nil }, Folder: "/"})
	for k, name := range want {
		if p.entries[k].Name != name {
			t.Errorf("place %d: %q, want %q", k, p.entries[k].Name, name)
		}
	}
	if got := p.InHand(); got != "/a.csv" {
		t.Errorf("%q in hand", got)
	}
	if got := middle("wire list of the engine loom, revision 10.csv", 24, true); got != "wire lis~revision 10.csv" {
		t.Errorf("%q", got)
	}
}

func TestBytes(t *testing.T) {
	for n, want := range map[int64]string{0: "0 B", 999: "999 B", 1000: "1.0 kB", 12_345: "12 kB", 999_499: "999 kB", 999_500: "1.0 MB",
		9_949_999: "9.9 MB", 25_000_000: "25 MB", 3_200_000_000: "3.2 GB"} {
		if got := Bytes(n); got != want {
			t.Errorf("%d: %q, want %q", n, got, want)
		}
	}
}

type part struct {
	id, what string
	mm       string
}

func TestColumns(t *testing.T) {
	columns := []Column[part]{
		{Head: "id", Cell: func(p part) string { return p.id }},
		{Head: "what", Cell: func(p part) string { return p.what }, Gives: true},
		{Head: "OD mm", Align: ToRight, Cell: func(p part) string { return p.mm }},
	}
	rows := []part{{"101", "線の長い名前", "1.09"}, {"C1", "crank\x1bsensor", "12.90"}}
	for _, tt := range []struct {
		name string
		w    int
		want string
	}{
		{"measured", 0, "id   what          OD mm\n101  線の長い名前   1.09\nC1   crank␛sensor  12.90"},
		{"one gives", 20, "id   what      OD mm\n101  線の長…    1.09\nC1   crank␛s…  12.90"},
		{"as far as it goes", 5, "id   what    OD mm\n101  線の…    1.09\nC1   crank…  12.90"},
	} {
		if got := joined(MakeColumns(columns, rows, tt.w, false).Lines(rows)); got != tt.want {
			t.Errorf("%s:\n%s\nwant\n%s", tt.name, got, tt.want)
		}
	}
	for _, line := range MakeColumns(columns, rows, 30, true).Lines(rows) {
		if draw.Plain(line) != line {
			t.Errorf("%q", line)
		}
	}
}

func TestGivenColumns(t *testing.T) {
	columns := []Column[part]{
		{Head: "id", Least: 3, Cell: func(p part) string { return p.id }},
		{Head: "called", Least: 5, Cell: func(p part) string { return p.what }},
		{Head: "OD mm", Least: 5, Align: ToRight, Cell: func(p part) string { return p.mm }},
		{Head: "again", Lead: 1, Cell: func(p part) string { return p.what }},
	}
	c := GivenColumns(columns, false)
	for _, tt := range []struct{ name, got, want string }{
		{"a head fills the gap behind it", c.Head(), "id  calledOD mm  again"},
		{"what is short", c.Line(part{"1", "ab", "1.0"}), "1   ab      1.0  ab"},
		{"words are cut, the last column's are not", c.Line(part{"1234", "crank sensor", "1.0"}), "12… cran…   1.0  crank sensor"},
		{"wide signs", c.Line(part{"1", "線の長い名前", "1.0"}), "1   線の…   1.0  線の長い名前"},
		{"a figure is whole, and its last digit stands where the others' do", c.Line(part{"1", "ab", "1234.5"}), "1   ab   1234.5  ab"},
		{"a figure that is too long pushes", c.Line(part{"1", "abcde", "1234567"}), "1   abcde 1234567 abcde"},
		{"and what is pushed stays apart", c.Line(part{"1", "abcde", "123456789"}), "1   abcde 123456789 abcde"},
		{"nothing at the end leaves no blanks", c.Line(part{"1", "", ""}), "1"},
		{"no escape sequence", c.Line(part{"1", "\x1b[1", "1.0"}), "1   ␛[1     1.0  ␛[1"},
		{"plain characters", GivenColumns(columns, true).Line(part{"1234", "crank", "1.0"}), "12~ crank   1.0  crank"},
	} {
		if tt.got != tt.want {
			t.Errorf("%s: %q, want %q", tt.name, tt.got, tt.want)
		}
	}
	if got, want := c.Width(), 3+1+5+1+5+2; got != want {
		t.Errorf("%d cells, want %d", got, want)
	}
}

func BenchmarkBar(b *testing.B) {
	th := NewTheme(draw.NewPalette(draw.TrueColour, true), false)
	keys := demoKeys(th)
	for b.Loop() {
		th.Bar(keys, 80)
	}
}

func BenchmarkScroll(b *testing.B) {
	th := NewTheme(draw.NewPalette(draw.TrueColour, true), false)
	s := longScroll()
	for b.Loop() {
		th.Scroll(s)
	}
}

func BenchmarkScrollByViewport(b *testing.B) {
	s := longScroll()
	s.view.SetContent(joined(s.lines))
	for b.Loop() {
		_ = s.view.View()
	}
}

func longScroll() *Scroll {
	s := &Scroll{}
	s.SetSize(118, 32)
	s.SetLines(strings.Split(strings.Repeat("a line of a report, as long as they are, about a cell that was read two ways\n", 2000), "\n"))
	s.Press("pgdown")
	return s
}

func BenchmarkPickerOfThousands(b *testing.B) {
	var all []Entry
	for k := range 10_000 {
		all = append(all, Entry{Name: fmt.Sprintf("list %d.csv", k*7919%10_000)})
	}
	th := NewTheme(draw.NewPalette(draw.TrueColour, true), false)
	of := PickerOf{List: func(string) ([]Entry, error) { return all, nil }, Folder: "/a"}
	b.Run("open", func(b *testing.B) {
		for b.Loop() {
			OpenPicker(of)
		}
	})
	p := OpenPicker(of)
	b.Run("key", func(b *testing.B) {
		for b.Loop() {
			if p.Press("down").Says != "" {
				p.Press("home")
			}
			th.Picker(p, 70, 30)
		}
	})
}

func BenchmarkNewTheme(b *testing.B) {
	for b.Loop() {
		NewTheme(draw.NewPalette(draw.TrueColour, true), false)
	}
}
