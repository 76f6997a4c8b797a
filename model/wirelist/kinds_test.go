package wirelist_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode"

	"contralay/model"
	"contralay/model/shorttest"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
)

// Lists of other people's habits, and what a person reads in each, written down before the program read it: every wire
// with its ends, name, size, colour and pair, nothing that the list does not say, and every stop. Those of
// testdata/lists/kinds stand beside what they should give; testdata/lists/habits holds many in a file: a
// line "=== NAME", the list, a line "---", and a line for each row:
//
//	row | from | to | name | size | colour | kind | id=, unit=, via=, text=
//
// An end is CONNECTOR:CAVITY; no connector is that of the file, no cavity any number that the import gives. "report ~"
// is what the report must say.
func TestHabits(t *testing.T) {
	lists := kindsOfLists(t)
	if len(lists) < 90 {
		t.Errorf("%d lists", len(lists))
	}
	for _, l := range shorttest.Some(lists) {
		t.Run(l.Name, func(t *testing.T) { l.holds(t) })
	}
}

// habit is one list and what it should give.
type habit struct {
	Name   string
	data   []byte
	Wires  []told
	Report []string
	Not    []string `json:"report_not"`
	Snags  int
}

// told is one wire that a person reads.
type told struct {
	Row            int
	From, To, Via  *place
	Name           *string
	Size           *string
	Colour         any
	Kind           any
	ID, Unit       string
	Text           any
	Soft           []string
	Also           bool
	ColourAs       string `json:"colour_as"`
	Contact, Group string
}

// place is an end; each is one text, a list of texts of which any is right, or null.
type place struct{ Connector, Cavity any }

// kindsOfLists reads all of them.
func kindsOfLists(t *testing.T) (all []habit) {
	t.Helper()
	expected, err := filepath.Glob(filepath.Join(lists, "kinds", "*.expect.json"))
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range expected {
		text, err := os.ReadFile(e)
		if err != nil {
			t.Fatal(err)
		}
		var h habit
		if err := json.Unmarshal(text, &h); err != nil {
			t.Fatalf("%s: %v", e, err)
		}
		beside, _ := filepath.Glob(strings.TrimSuffix(e, ".expect.json") + ".[cmx]*")
		h.Name = filepath.Base(beside[0])
		if h.data, err = os.ReadFile(beside[0]); err != nil {
			t.Fatal(err)
		}
		all = append(all, h)
	}
	bundles, _ := filepath.Glob(filepath.Join(lists, "habits", "*.txt"))
	for _, b := range bundles {
		text, err := os.ReadFile(b)
		if err != nil {
			t.Fatal(err)
		}
		for _, part := range strings.Split("\n"+string(text), "\n=== ")[1:] {
			name, rest, _ := strings.Cut(part, "\n")
			list, want, ok := strings.Cut(rest+"\n", "\n---\n")
			if !ok {
				t.Fatalf("%s, %s: no line ---", b, name)
			}
			h := habit{Name: name, data: []byte(list + "\n")}
			for line := range strings.FieldsFuncSeq(want, func(r rune) bool { return r == '\n' }) {
				h.add(t, line)
			}
			all = append(all, h)
		}
	}
	return all
}

// add takes in one line of what a list should give.
func (h *habit) add(t *testing.T, line string) {
	t.Helper()
	if says, ok := strings.CutPrefix(line, "report ~ "); ok {
		h.Report = append(h.Report, says)
		return
	}
	if never, ok := strings.CutPrefix(line, "report !~ "); ok {
		h.Not = append(h.Not, never)
		return
	}
	f := strings.Split(line, " | ")
	if len(f) < 7 {
		t.Fatalf("%s: %q", h.Name, line)
	}
	text := func(s string) *string {
		if s = strings.TrimSpace(s); s != "-" {
			return &s
		}
		return nil
	}
	end := func(s string) *place {
		s = strings.TrimSpace(s)
		if s == "-" {
			return nil
		}
		at := strings.LastIndexByte(s, ':')
		var p place
		if at > 0 {
			p.Connector = s[:at]
		}
		if at+1 < len(s) {
			p.Cavity = s[at+1:]
		}
		return &p
	}
	w := told{From: end(f[1]), To: end(f[2]), Name: text(f[3]), Size: text(f[4]), Kind: strings.TrimSpace(f[6])}
	if c := text(f[5]); c != nil {
		w.Colour = *c
	}
	if len(f) > 7 {
		for _, kv := range regexp.MustCompile(`(\w+)=((?:[^= ]| [^= ]*(?: |$))+)`).FindAllStringSubmatch(f[7], -1) {
			switch v := strings.TrimSpace(kv[2]); kv[1] {
			case "id":
				w.ID = v
			case "unit":
				w.Unit = v
			case "text":
				w.Text = v
			case "via":
				w.Via = end(v)
			case "also":
				w.Also = true
			case "alt":
				w.Soft = append(w.Soft, "to")
			case "colour":
				w.Soft = append(w.Soft, "colour")
			}
		}
	}
	h.Wires = append(h.Wires, w)
}

// holds imports the list and holds what comes of it against what a person reads.
func (h *habit) holds(t *testing.T) {
	tables, err := table.Read(h.Name, h.data, table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	got, rep, err := wirelist.Import(tables, draft.Options{})
	report := strings.Join(rep.Full(), "\n")
	if err != nil {
		report = err.Error()
		if slices.ContainsFunc(h.Wires, func(w told) bool { return !w.Also }) {
			t.Fatal(err)
		}
	} else {
		sound(t, got)
		h.wires(t, &got, report)
	}
	for _, says := range h.Report {
		if !regexp.MustCompile("(?i)" + says).MatchString(report) {
			t.Errorf("the report does not say %q\n%s", says, report)
		}
	}
	for _, says := range h.Not {
		if regexp.MustCompile("(?i)" + says).MatchString(report) {
			t.Errorf("the report says %q\n%s", says, report)
		}
	}
	if n := strings.Count("\n"+report, ": stop: "); n != h.Snags {
		t.Errorf("%d stops, want %d\n%s", n, h.Snags, report)
	}
}

// wires pairs each row with the wires that come of it.
func (h *habit) wires(t *testing.T, got *model.Harness, report string) {
	used := map[string]bool{}
	unit := map[string]string{}
	for _, u := range got.Units {
		for _, id := range u.Wires {
			unit[id] = u.ID
		}
	}
	of := map[string]string{} // unit of the list → of the harness
	for _, also := range []bool{false, true} {
		for _, w := range h.Wires {
			if w.Also != also || slices.Contains(anyOf(w.Kind), "blank") || slices.Contains(anyOf(w.Kind), "reserved") {
				continue
			}
			ids := w.in(got, used)
			switch {
			case ids == nil && !also:
				t.Errorf("row %d: no wire is %s\n%s", w.Row, w, dump(got, report))
			case w.Unit != "" && unit[ids[0]] == "", w.Unit == "" && ids != nil && unit[ids[0]] != "" && !also:
				t.Errorf("row %d: %s in unit %q, want %q", w.Row, ids[0], unit[ids[0]], w.Unit)
			case w.Unit != "":
				if was, ok := of[w.Unit]; ok && was != unit[ids[0]] {
					t.Errorf("row %d: unit %s parted", w.Row, w.Unit)
				}
				of[w.Unit] = unit[ids[0]]
			}
			for _, id := range ids {
				used[id] = true
			}
		}
	}
	for _, w := range got.Wires {
		if !used[w.ID] {
			t.Errorf("no row tells wire %s %s %s %s\n%s", w.ID, w.Signal.V, w.From.V, w.To.V, report)
		}
	}
}

// in finds the wires of one row: one, or one on either side of a bulkhead, or one for each of several cavities.
func (w told) in(h *model.Harness, used map[string]bool) (ids []string) {
	ends := [][2]*place{{w.From, w.To}}
	switch {
	case w.Via != nil:
		ends = [][2]*place{{w.From, w.Via}, {w.Via, w.To}}
	case w.From != nil && strings.Contains(anyOf(w.From.Cavity)[0], " & "):
		ends = nil
		for one := range strings.SplitSeq(anyOf(w.From.Cavity)[0], " & ") {
			ends = append(ends, [2]*place{{Connector: w.From.Connector, Cavity: one}, w.To})
		}
	case w.To != nil && strings.Contains(anyOf(w.To.Cavity)[0], " & "):
		ends = nil
		for one := range strings.SplitSeq(anyOf(w.To.Cavity)[0], " & ") {
			ends = append(ends, [2]*place{w.From, {Connector: w.To.Connector, Cavity: one}})
		}
	}
	for _, e := range ends {
		found := ""
		for i := range h.Wires {
			if x := &h.Wires[i]; !used[x.ID] && !slices.Contains(ids, x.ID) && w.isOf(h, x, e) {
				found = x.ID
				break
			}
		}
		if found == "" {
			return nil
		}
		ids = append(ids, found)
	}
	return ids
}

// isOf reports whether a wire says what a row says, and nothing else.
func (w told) isOf(h *model.Harness, x *model.Wire, ends [2]*place) bool {
	got := []string{x.From.V, x.To.V}
	for k, e := range ends {
		if e == nil {
			continue
		}
		at := slices.IndexFunc(got, func(s string) bool { return s != "" && e.is(h, s) })
		if at < 0 {
			if k == 1 && slices.Contains(w.Soft, "to") {
				continue
			}
			return false
		}
		got[at] = ""
	}
	if strings.Join(got, "") != "" && !slices.Contains(w.Soft, "to") {
		return false
	}
	text := plain(x.Note.V + " " + x.ID)
	called := plain(x.Signal.V + "\x00" + x.ID + "\x00" + x.From.V)
	size := ""
	if w.Size != nil {
		size = *w.Size
	}
	for _, s := range anyOf(w.Text) {
		if !strings.Contains(text, plain(s)) {
			return false
		}
	}
	return (w.Name == nil || strings.Contains(called, plain(*w.Name))) && x.Size == size && w.colour(x) &&
		(w.ID == "" || w.ID == x.ID || strings.HasPrefix(x.ID, w.ID+"-")) &&
		(x.Role.V == model.RoleSpare) == slices.Contains(anyOf(w.Kind), "spare")
}

// colour reports whether a wire has the colour that a row says, in its code, its shade or, of a shade that no key has, in its note.
func (w told) colour(x *model.Wire) bool {
	if w.Colour == nil || slices.Contains(w.Soft, "colour") {
		return x.Colour.V == "" || slices.Contains(w.Soft, "colour")
	}
	for _, c := range anyOf(w.Colour) {
		want, _ := value.ParseColour(c, "")
		code, _ := value.ParseColour(x.Colour.V, "")
		if len(want) > 0 && len(want) == len(code) && string(x.Shade.V) == want[0].Shade &&
			slices.EqualFunc(want, code, func(a, b value.Hue) bool { return a.Of == b.Of }) {
			return true
		}
	}
	return false
}

// is reports whether an end of the harness is the place.
func (p *place) is(h *model.Harness, end string) bool {
	id, cavity, _ := strings.Cut(end, ":")
	names, made := []string{plain(id)}, true
	for _, t := range h.Terminations {
		if t.ID == id {
			names = append(names, plain(t.Name.V))
			for k, c := range t.Cavities {
				made = made && c == []string{"1", "2", "3", "4", "5", "6", "7", "8", "9"}[min(k, 8)]
			}
		}
	}
	for _, connector := range anyOf(p.Connector) {
		for _, v := range anyOf(p.Cavity) {
			want := plain(connector) + plain(v)
			for _, n := range names {
				// "Dimmer 1" is a device or the first cavity of one: the list does not say.
				if n != "" && (want == n+plain(cavity) || made && want == n) || connector == "" && plain(v) == plain(cavity) {
					return true
				}
			}
		}
	}
	return false
}

// anyOf is one text, or several of which any will do; "" is none.
func anyOf(v any) (all []string) {
	switch v := v.(type) {
	case string:
		return []string{v}
	case []any:
		for _, x := range v {
			all = append(all, anyOf(x)...)
		}
		return all
	}
	return []string{""}
}

// plain is a text without case and signs, but for the poles at its end.
func plain(s string) string {
	s = strings.NewReplacer("−", "-", "–", "-").Replace(strings.ToLower(s))
	var b strings.Builder
	for i, r := range s {
		switch {
		case unicode.IsLetter(r) || unicode.IsDigit(r) || r == 0:
			b.WriteRune(r)
		case r == '+':
			b.WriteString("plus")
		case r == '-' && (i+1 == len(s) || !(s[i+1] >= 'a' && s[i+1] <= 'z' || s[i+1] >= '0' && s[i+1] <= '9')):
			b.WriteString("minus")
		}
	}
	return b.String()
}

func (w told) String() string {
	text, _ := json.Marshal(w)
	return string(text)
}

// dump is the wires of a harness and its report, for a message.
func dump(h *model.Harness, report string) string {
	var b strings.Builder
	for _, w := range h.Wires {
		b.WriteString("  " + strings.Join([]string{w.ID, w.Signal.V, w.From.V, w.To.V, w.Size, w.Colour.V, string(w.Shade.V), w.Note.V},
			" | ") + "\n")
	}
	return b.String() + report
}
