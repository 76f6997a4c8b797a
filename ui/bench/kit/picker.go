package kit

import (
	"cmp"
	"fmt"
	"path/filepath"
	"slices"
	"strings"
	"time"

	"contralay/ui/draw"
)

// Entry is a file or a folder as the bench is told of it.
type Entry struct {
	Name   string
	Folder bool
	Bytes  int64
	When   time.Time // last changed
}

// PickerOf is what is to be chosen, and where the choice begins.
type PickerOf struct {
	// List is the bench's only door to the disk: what lies in a folder, in any order.
	List    func(folder string) ([]Entry, error)
	Folder  string   // begins here
	Ends    []string // of file names that may be chosen, ".csv"; none: all
	Folders bool     // a folder is wanted, not a file
	Now     time.Time
}

// Picker chooses a file or a folder with arrows and Enter: folders first, each by name,
// ".." on top, what is hidden left out.
//
// The library's filepicker is not used: it reads the disk itself, at any time and
// through no argument, which the bench must not; it opens with a message that answers
// later; and it takes keys of letters that a glove hits. Its rows are these.
type Picker struct {
	PickerOf
	entries []Entry
	at      int
	fails   string // the folder could not be read
}

// PickerAnswer is what a key did.
type PickerAnswer struct {
	Path   string // what was chosen; "" where nothing was
	Leaves bool   // Esc: the choice is given up
	Says   string // what to tell, "" for nothing
}

// parent is the entry that leads up, and here the one that takes the folder itself.
const parent, here = "..", "."

// OpenPicker opens the choice on its folder.
func OpenPicker(of PickerOf) *Picker {
	p := &Picker{PickerOf: of}
	p.Folder = filepath.Clean(of.Folder) // "" is the folder the program runs in
	p.read("")
	return p
}

// read lists the folder and puts the cursor on an entry by name, else on the first.
func (p *Picker) read(on string) {
	p.entries, p.at, p.fails = nil, 0, ""
	if p.Folders {
		p.entries = append(p.entries, Entry{Name: here, Folder: true})
	}
	if up := filepath.Dir(p.Folder); up != p.Folder || p.Folder == "." {
		p.entries = append(p.entries, Entry{Name: parent, Folder: true})
	}
	all, err := []Entry(nil), error(nil)
	if p.List != nil {
		all, err = p.List(p.Folder)
	}
	if err != nil {
		p.fails = draw.Clean(err.Error())
		return
	}
	first := len(p.entries)
	for _, e := range all {
		if !strings.HasPrefix(e.Name, ".") && e.Name != "" && (e.Folder || !p.Folders && p.takes(e.Name)) {
			p.entries = append(p.entries, e)
		}
	}
	// Made once for each name: a folder of thousands is sorted in a few milliseconds.
	fold := make(map[string]string, len(p.entries))
	for _, e := range p.entries {
		fold[e.Name] = strings.ToLower(e.Name)
	}
	slices.SortFunc(p.entries[first:], func(a, b Entry) int {
		if a.Folder != b.Folder {
			if a.Folder {
				return -1
			}
			return 1
		}
		return cmp.Or(counted(fold[a.Name], fold[b.Name]), cmp.Compare(a.Name, b.Name))
	})
	p.at = min(first, len(p.entries)-1)
	for k, e := range p.entries {
		if e.Name == on {
			p.at = k
		}
	}
	p.at = max(p.at, 0)
}

// counted compares names as they are counted: revision 9 before revision 10.
func counted(a, b string) int {
	for a != "" && b != "" {
		n, m := digits(a), digits(b)
		if n > 0 && m > 0 {
			x, y := strings.TrimLeft(a[:n], "0"), strings.TrimLeft(b[:m], "0")
			if c := cmp.Or(cmp.Compare(len(x), len(y)), cmp.Compare(x, y)); c != 0 {
				return c
			}
			a, b = a[n:], b[m:]
			continue
		}
		if a[0] != b[0] {
			return cmp.Compare(a[0], b[0])
		}
		a, b = a[1:], b[1:]
	}
	return cmp.Compare(len(a), len(b))
}

// digits is how many digits a text begins with.
func digits(s string) int {
	n := 0
	for n < len(s) && s[n] >= '0' && s[n] <= '9' {
		n++
	}
	return n
}

// InHand is the path of the entry in hand, made safe to show; "" where there is none.
func (p *Picker) InHand() string {
	if len(p.entries) == 0 {
		return ""
	}
	return draw.Clean(filepath.Join(p.Folder, p.entries[p.at].Name))
}

func (p *Picker) takes(name string) bool {
	if len(p.Ends) == 0 {
		return true
	}
	name = strings.ToLower(name)
	return slices.ContainsFunc(p.Ends, func(end string) bool { return strings.HasSuffix(name, strings.ToLower(end)) })
}

// Press gives one key to the choice.
func (p *Picker) Press(name string) PickerAnswer {
	to := p.at
	switch name {
	case "up":
		to--
	case "down":
		to++
	case "pgup":
		to = max(0, to-10)
	case "pgdown":
		to = min(len(p.entries)-1, to+10)
	case "home":
		to = 0
	case "end":
		to = len(p.entries) - 1
	case "enter", "right":
		return p.enter(name == "right")
	case "left", "backspace":
		return p.up()
	case "esc":
		return PickerAnswer{Leaves: true}
	default:
		return PickerAnswer{Says: "that key does nothing here. Arrows choose, Enter opens or takes, Esc leaves"}
	}
	switch {
	case len(p.entries) == 0:
		return PickerAnswer{Says: "nothing to choose here"}
	case to < 0:
		return PickerAnswer{Says: "first row"}
	case to >= len(p.entries):
		return PickerAnswer{Says: "last row"}
	}
	p.at = to
	return PickerAnswer{}
}

func (p *Picker) enter(onlyOpen bool) PickerAnswer {
	if len(p.entries) == 0 {
		return PickerAnswer{Says: "nothing to choose here"}
	}
	e := p.entries[p.at]
	switch {
	case e.Name == parent:
		return p.up()
	case e.Name == here && !onlyOpen:
		return PickerAnswer{Path: p.Folder}
	case e.Folder && e.Name != here:
		was := p.Folder
		p.Folder = filepath.Join(p.Folder, e.Name)
		p.read("")
		if p.fails != "" {
			says := p.fails
			p.Folder = was
			p.read(e.Name)
			return PickerAnswer{Says: "that folder cannot be read: " + says}
		}
		return PickerAnswer{}
	case onlyOpen:
		return PickerAnswer{Says: "Enter takes it"}
	}
	return PickerAnswer{Path: filepath.Join(p.Folder, e.Name)}
}

func (p *Picker) up() PickerAnswer {
	up := filepath.Dir(p.Folder)
	if p.Folder == "." || strings.HasSuffix(p.Folder, parent) {
		up = filepath.Join(p.Folder, parent) // a path that is not from the root goes on upward
	}
	if up == p.Folder {
		return PickerAnswer{Says: "this is the topmost folder"}
	}
	was, came := p.Folder, filepath.Base(p.Folder)
	p.Folder = up
	p.read(came)
	if p.fails != "" {
		says := p.fails
		p.Folder = was
		p.read(parent)
		return PickerAnswer{Says: "the folder above cannot be read: " + says}
	}
	return PickerAnswer{}
}

// Picker draws the choice in exactly h lines of w cells: the folder, then a window on
// its entries round the one in hand. Only entries that show are formatted.
func (t *Theme) Picker(p *Picker, w, h int) []string {
	out := make([]string, 0, max(h, 0))
	put := func(s string) {
		if len(out) < h {
			out = append(out, t.Fit(s, w))
		}
	}
	put(t.Paint(Quiet, tail(t.Text(p.Folder), w, t.ASCII)))
	switch {
	case p.fails != "":
		for _, line := range Wrap("This folder cannot be read: "+p.fails, w) {
			put(line)
		}
	case len(p.entries) == 0 || len(p.entries) == 1 && p.entries[0].Name == parent:
		put("Nothing to choose in this folder" + p.wanted() + ".")
	}
	room := h - len(out)
	first, last := Window(len(p.entries), p.at, room)
	for k := first; k < last; k++ {
		switch {
		case k == first && first > 0 && k != p.at:
			put(t.Paint(Quiet, fmt.Sprintf("   %s %d more", t.Signs.Above, first+1)))
		case k == last-1 && last < len(p.entries) && k != p.at:
			put(t.Paint(Quiet, fmt.Sprintf("   %s %d more", t.Signs.Below, len(p.entries)-last+1)))
		default:
			put(t.Row(Row{Text: t.entry(p, p.entries[k], w-GutterW), Hand: k == p.at}, w))
		}
	}
	for len(out) < h {
		put("")
	}
	return out
}

func (p *Picker) wanted() string {
	if p.Folders || len(p.Ends) == 0 {
		return ""
	}
	return " (" + strings.Join(p.Ends, ", ") + ")"
}

// entry is one row: name, size, day.
func (t *Theme) entry(p *Picker, e Entry, w int) string {
	const sizeW, dayW, gap = 7, 12, 2
	name := t.Text(e.Name)
	switch {
	case e.Name == here:
		return "this folder"
	case e.Name == parent:
		return ".. the folder above"
	case e.Folder:
		name += t.Signs.Folder
	}
	size, day := "", people(e.When, p.Now)
	if !e.Folder {
		size = Bytes(e.Bytes)
	}
	room := w - gap - sizeW - gap - dayW
	if room < 16 {
		room, day = w-gap-sizeW, ""
	}
	if room < 8 {
		return middle(name, w, t.ASCII)
	}
	line := draw.Pad(middle(name, room, t.ASCII), room+gap) + draw.PadLeft(size, sizeW)
	if day != "" {
		line += "  " + day
	}
	return line
}

// middle leaves out the middle of a name that is too long: it is known by how it begins,
// and told from its copies by how it ends.
func middle(s string, w int, ascii bool) string {
	if draw.Width(s) <= w {
		return s
	}
	begin := ""
	for _, c := range clusters(s) {
		if draw.Width(begin)+draw.Width(c) > w/3 {
			break
		}
		begin += c
	}
	return begin + tail(s, w-draw.Width(begin), ascii)
}

// tail is the end of a text that is too long for its place.
func tail(s string, w int, ascii bool) string {
	if draw.Width(s) <= w {
		return s
	}
	more := "…"
	if ascii {
		more = "~"
	}
	all := clusters(s)
	n := draw.Width(s)
	for len(all) > 0 && n+1 > w {
		n -= draw.Width(all[0])
		all = all[1:]
	}
	if w < 1 {
		return ""
	}
	return more + strings.Join(all, "")
}

// Bytes is a size for people: three figures at most and a unit.
func Bytes(n int64) string {
	switch v := float64(n); {
	case n < 0:
		return ""
	case n < 1000:
		return fmt.Sprintf("%d B", n)
	case v < 9950:
		return fmt.Sprintf("%.1f kB", v/1e3)
	case v < 999_500:
		return fmt.Sprintf("%.0f kB", v/1e3)
	case v < 9_950_000:
		return fmt.Sprintf("%.1f MB", v/1e6)
	case v < 999_500_000:
		return fmt.Sprintf("%.0f MB", v/1e6)
	default:
		return fmt.Sprintf("%.1f GB", v/1e9)
	}
}

// people is a time for people: the hour today, the day this year, else the day and
// year.
func people(when, now time.Time) string {
	if when.IsZero() {
		return ""
	}
	when = when.In(now.Location())
	switch {
	case when.Year() == now.Year() && when.YearDay() == now.YearDay():
		return "today " + when.Format("15:04")
	case when.Year() == now.Year():
		return when.Format("2 Jan 15:04")
	}
	return when.Format("2 Jan 2006")
}

// Window is the rows first to last−1 that show when room fit and at is in hand. It moves
// only as far as it must, in half pages, so that nothing jumps.
func Window(n, at, room int) (first, last int) {
	if n <= room || room <= 0 {
		return 0, min(n, max(room, 0))
	}
	if room == 1 { // no room to say that there are more
		return at, at + 1
	}
	step := max(1, room/2)
	first = max(0, (at/step)*step-step/2)
	first = min(first, n-room)
	for at >= first+room-1 && first < n-room {
		first++
	}
	return first, first + room
}
