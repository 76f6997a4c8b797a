// Package benchtest opens the bench for tests, presses its keys and reads its screen. Only
// tests import it.
package benchtest

import (
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/calc/phase/planning"
	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/model/file"
	"contralay/model/shorttest"
	"contralay/model/unit"
	"contralay/ui/bench"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/layers"
	"contralay/ui/bench/layers/ways"
)

// shelf is the catalogue, read once: it is only read afterwards.
var shelf = sync.OnceValues(func() (*catalogue.Catalogue, error) {
	shorttest.CollectLate()
	return catalogue.Default()
})

// Catalogue is the catalogue that the program comes with.
func Catalogue(t testing.TB) *catalogue.Catalogue {
	t.Helper()
	c, err := shelf()
	if err != nil {
		t.Fatal(err)
	}
	return c
}

// root is the folder of the module.
var root = sync.OnceValues(func() (string, error) {
	at, err := os.Getwd()
	for err == nil {
		if _, is := os.Stat(filepath.Join(at, "go.mod")); is == nil {
			return at, nil
		}
		if at == filepath.Dir(at) {
			return "", os.ErrNotExist
		}
		at = filepath.Dir(at)
	}
	return "", err
})

// Path is a file of the module, by its name from the root on.
func Path(t testing.TB, name string) string {
	t.Helper()
	r, err := root()
	if err != nil {
		t.Fatal(err)
	}
	return filepath.Join(r, filepath.FromSlash(name))
}

// read holds the files of testdata that were read: a harness is a value, and edits share it.
var read sync.Map

// Load reads a file of testdata.
func Load(t testing.TB, name string) file.Document {
	t.Helper()
	if d, ok := read.Load(name); ok {
		return d.(file.Document)
	}
	d, err := file.Load(Path(t, "testdata/"+name))
	if err != nil {
		t.Fatal(err)
	}
	read.Store(name, d)
	return d
}

// Config is what a bench on a file of testdata is opened with.
func Config(t testing.TB, name string) desk.Config {
	t.Helper()
	return desk.Config{Doc: Load(t, name), Path: name, Cat: Catalogue(t)}
}

// Open is a bench on a file of testdata, with every proposal worked out.
func Open(t testing.TB, name string) *desk.Model {
	t.Helper()
	return OpenWith(t, name, Config(t, name))
}

// OpenAt is a bench with a screen of EveryScreen in front.
func OpenAt(t testing.TB, name, screen string) *desk.Model {
	t.Helper()
	m, lacks := Reach(t, name, screen)
	if lacks != "" {
		t.Errorf("no row says %q on %s: the screen meant is not reached", lacks, m.Title())
	}
	return m
}

// Reach is as OpenAt, for a harness that may lack what a screen shows: lacks is the row that the
// way to it does not find.
func Reach(t testing.TB, name, screen string) (m *desk.Model, lacks string) {
	t.Helper()
	return ReachWith(t, name, screen, Config(t, name))
}

// ReachWith is as Reach, for a bench that is opened otherwise.
func ReachWith(t testing.TB, name, screen string, c desk.Config) (m *desk.Model, lacks string) {
	t.Helper()
	c = Started(screen, c)
	m = OpenWith(t, name, c)
	return m, walk(m, EveryScreen[screen])
}

// Started is a bench as it must be opened for a screen: some only come with a start of their own.
func Started(screen string, c desk.Config) desk.Config {
	switch screen {
	case "unsaved work":
		was := file.Document{Harness: c.Doc.Harness, Head: c.Doc.Head}
		h := *c.Doc.Harness.EditWire(0, func(w *model.Wire) { w.Size, w.Amps = "20", model.Some(unit.Ampere(3)) })
		is := file.Document{Harness: h}
		c.Left = []desk.Left{{Doc: is, When: "4 May 2026 16:20", Changed: true, Says: file.Differences(was, is),
			Discard: func() error { return nil }}, {Doc: is, When: "3 May 2026 10:00", Discard: func() error { return fmt.Errorf("no") }}}
	case "still needed", "a branch to":
		c.Doc.Harness = lacking(&c.Doc.Harness)
	case "wire list", "table of a list", "meanings of a column":
		c.ListBytes = func(string) ([]byte, error) { return []byte(aList), nil }
	case "file changed":
		c.Changed = func(string) bool { return true }
	}
	return c
}

// aList is a wire list of another hand.
const aList = "Pin,Signal,Colour,AWG,Remark\n1,Feed,red,20,\n2,Ground,black,20,short\n3,Pump,violet,22,\n4,,,,\n"

// lacking is a harness without what the screens of what is missing are about: a branch, a length,
// the currents, a colour, the number.
func lacking(h *model.Harness) model.Harness {
	out := *h.EditWire(0, func(w *model.Wire) { w.Colour = model.Opt[string]{} })
	for i := range h.Wires {
		out = *out.EditWire(i, func(w *model.Wire) { w.Amps = model.Opt[unit.Ampere]{} })
	}
	out = *out.EditBranch(len(h.Branches)-1, func(b *model.Branch) { b.LengthMM = 0 })
	out.Terminations = append(slices.Clone(h.Terminations), model.Termination{ID: "NEW1", Cavities: []string{"1", "2"},
		Gender: model.Some(model.GenderPin)})
	out.Head.Number = model.Opt[string]{}
	return out
}

// worked holds the sheet of each file with its proposals, and beside what its steps wanted worked out:
// that is the slow part, and what came of it is only read.
var worked, beside sync.Map

// OpenWith is a bench with every proposal worked out. name tells harnesses apart: what was
// worked out for one is taken again for the next of its name.
func OpenWith(t testing.TB, name string, c desk.Config) *desk.Model {
	t.Helper()
	plans := -1
	if known, ok := worked.Load(name); ok {
		c.Known = known.(*sheet.Sheet)
		plans = len(c.Known.Proposals)
	}
	m := bench.New(c)
	m.Tables.Steps, m.Tables.Screens = slices.Clone(m.Tables.Steps), slices.Clone(m.Tables.Screens)
	for k := range m.Tables.Steps {
		m.Tables.Steps[k].Beside = once(name, m.Tables.Steps[k].Beside)
		if m.Tables.Steps[k].Kind == layers.Step {
			m.Tables.Steps[k].Beside = once(name, layers.PlanCliffs) // without the ways: see Ways
		}
	}
	for k := range m.Tables.Screens {
		switch p := &m.Tables.Screens[k]; p.Kind {
		case ways.Screen:
			p.Beside = nil
		case layers.CliffsKind: // what comes of it hangs on its key alone, as with the steps
			p.Beside = once(name, p.Beside)
		}
	}
	if m = Ready(m); len(m.Sheet.Proposals) > plans {
		worked.Store(name, m.Sheet)
	}
	return m
}

// Ways lets a bench work out the ways in which a branch could be, as the program does, and all else that the step
// Layers wants. It plans for each after every change, so a test asks for it that looks at them; for the others they are
// being worked out.
func Ways(m *desk.Model) *desk.Model { return withWays(m, layers.Beside) }

// WaysAlone is as Ways, without the counts and the search: the ways hang on neither.
func WaysAlone(m *desk.Model) *desk.Model { return withWays(m, ways.Plan) }

// withWays is a bench that has so much worked out at the step Layers, and the ways on their own screen.
func withWays(m *desk.Model, wants func(m *desk.Model) (desk.Work, bool)) *desk.Model {
	m.Tables = bench.New(m.Cfg).Tables
	m.Tables.Steps, m.Tables.Screens = slices.Clone(m.Tables.Steps), slices.Clone(m.Tables.Screens)
	for k := range m.Tables.Steps {
		if s := &m.Tables.Steps[k]; s.Kind == layers.Step {
			s.Beside = onceOf(wants)
		}
	}
	for k := range m.Tables.Screens {
		if s := &m.Tables.Screens[k]; s.Kind == ways.Screen {
			s.Beside = onceOf(s.Beside)
		}
	}
	return Ready(m)
}

// onceOf is what is wanted at the step Layers, each count and each way worked out once for what it hangs on.
func onceOf(wants func(m *desk.Model) (desk.Work, bool)) func(m *desk.Model) (desk.Work, bool) {
	return func(m *desk.Model) (desk.Work, bool) {
		w, ok := wants(m)
		switch what, _, _ := strings.Cut(w.Key, "\x00"); what {
		case "count":
			return kept(m.Cfg.Path+w.Key, w), ok
		case "ways":
			return kept(m.Cfg.Path+w.Key[:strings.LastIndex(w.Key, "\x00")]+lying(m), w), ok
		}
		return w, ok // a search goes on from where its own bench left it
	}
}

// lying is all that the ways of the branch in hand hang on: the harness, the branch, and how the branches lie that
// are only proposed.
func lying(m *desk.Model) string {
	var s strings.Builder
	fmt.Fprintf(&s, "\x00%s\x00%d", file.Encode(m.Doc()), m.Branch)
	for i := range m.Sheet.Branches {
		if b := &m.Sheet.Branches[i]; b.Proposed {
			fmt.Fprint(&s, i, b.As, ";")
		}
	}
	return s.String()
}

// once is what a step wants worked out beside it, worked out once for the harness of a name. What it is about
// stands in its key whole.
func once(name string, wants func(m *desk.Model) (desk.Work, bool)) func(m *desk.Model) (desk.Work, bool) {
	if wants == nil {
		return nil
	}
	return func(m *desk.Model) (desk.Work, bool) {
		w, ok := wants(m)
		return kept(name+w.Key, w), ok
	}
}

// kept is a work that is done once, whichever bench asks for it: what came of it is taken again.
func kept(key string, w desk.Work) desk.Work {
	do := w.Do
	w.Do = func() func(m *desk.Model) {
		take, _ := beside.LoadOrStore(key, sync.OnceValue(do))
		return take.(func() func(m *desk.Model))()
	}
	return w
}

// EachScreen runs a test of every screen, side by side.
func EachScreen(t *testing.T, test func(t *testing.T, screen string)) {
	t.Parallel()
	for _, screen := range Screens() {
		t.Run(screen, func(t *testing.T) {
			t.Parallel()
			test(t, screen)
		})
	}
}

// EachOrSome is EachScreen, but by default every third screen, others for another test, and with -short every ninth: the
// race detector makes the long sweeps ten times as long. In the long form it is every screen.
func EachOrSome(t *testing.T, test func(t *testing.T, screen string)) {
	at := map[string]int{}
	for k, screen := range Screens() {
		at[screen] = k + len(t.Name())
	}
	every := 3
	switch {
	case shorttest.Long():
		every = 1
	case testing.Short():
		every = 9
	}
	EachScreen(t, func(t *testing.T, screen string) {
		if at[screen]%every == 0 {
			test(t, screen)
		}
	})
}

// Turn reports whether it is the turn of an ordinary run to try the k-th of many things on a screen: one of every so
// many, another one on the next screen; all of them in the long form.
func Turn(screen string, k, every int) bool {
	at, _ := slices.BinarySearch(Screens(), screen)
	return shorttest.Long() || (at+k)%every == 0
}

// Screens are the names of every screen, in the order of the alphabet.
func Screens() []string { return screens() }

var screens = sync.OnceValue(func() []string { return slices.Sorted(maps.Keys(EveryScreen)) })

// Typed is a bench on the text of a file.
func Typed(t testing.TB, text string) *desk.Model {
	t.Helper()
	d, err := file.Parse([]byte(text), "test")
	if err != nil {
		t.Fatal(err)
	}
	return Ready(bench.New(desk.Config{Doc: d, Path: "test.toml", Cat: Catalogue(t)}))
}

// Ready runs what would be worked out beside the screen.
func Ready(m *desk.Model) *desk.Model {
	run(m, bench.Program{Model: m}.Init())
	return m
}

// run runs a command and what follows from it, until the bench wants no more or quits.
func run(m *desk.Model, cmd tea.Cmd) {
	for cmd != nil {
		key := pending(m)
		if p, known := plans.Load(planOf{m.Cfg.Path, key}); known {
			delete(m.Pending, key)
			planning.Adopt(m.Sheet, key, p.(sheet.Proposal))
			m.Rebuild()
			cmd = m.Plan()
			continue
		}
		msg := cmd()
		if _, quit := msg.(tea.QuitMsg); quit {
			return
		}
		cmd = Update(m, msg)
		if p, is := m.Sheet.Proposals[key]; is {
			plans.LoadOrStore(planOf{m.Cfg.Path, key}, p)
		}
	}
}

// plans holds the lay-ups that benches had worked out: the same keys on the same file ask the same question again.
var plans sync.Map

// planOf is a question about a harness.
type planOf struct{ file, key string }

// pending is the key of what a bench has begun to work out beside the screen; "" where it is nothing.
func pending(m *desk.Model) string {
	for key := range m.Pending {
		return key // it begins one thing at a time
	}
	return ""
}

// Update gives the bench one message, and hands back what it wants run.
func Update(m *desk.Model, msg tea.Msg) tea.Cmd {
	_, cmd := bench.Program{Model: m}.Update(msg)
	return cmd
}

// Size is the size of the screen from now on.
func Size(m *desk.Model, w, h int) { Update(m, tea.WindowSizeMsg{Width: w, Height: h}) }

// View is the screen.
func View(m *desk.Model) string { return bench.Program{Model: m}.View() }

// Press sends keys by name and runs what they start.
func Press(m *desk.Model, keys ...string) {
	for _, k := range keys {
		run(m, Update(m, Message(k)))
	}
}

var keyTypes = map[string]tea.KeyType{"up": tea.KeyUp, "down": tea.KeyDown, "left": tea.KeyLeft, "right": tea.KeyRight,
	"enter": tea.KeyEnter, "esc": tea.KeyEsc, "backspace": tea.KeyBackspace, "ctrl+c": tea.KeyCtrlC, "ctrl+z": tea.KeyCtrlZ,
	"delete": tea.KeyDelete, "tab": tea.KeyTab, "end": tea.KeyEnd, "home": tea.KeyHome, "pgdown": tea.KeyPgDown, "pgup": tea.KeyPgUp}

// Message is a key by its name; what is no name is typed as it stands, in one burst.
func Message(k string) tea.KeyMsg {
	if t, ok := keyTypes[k]; ok {
		return tea.KeyMsg{Type: t}
	}
	return tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(k)}
}

// GoTo presses keys; "@text" puts the cursor on the row that has the text, which must be there,
// or the screen that is meant is not the one that is tested; "to step" goes right as far as that
// step.
func GoTo(t testing.TB, m *desk.Model, keys ...string) {
	t.Helper()
	if lacks := walk(m, keys); lacks != "" {
		t.Errorf("no row says %q on %s: the screen meant is not reached", lacks, m.Title())
	}
}

// walk presses keys, and stops at the first row that is not there. As with a person who knows the way, what a screen
// that is passed would have worked out is dropped by the next key; that of the last, and of one whose row is not there
// without it, is waited for.
func walk(m *desk.Model, keys []string) (lacks string) {
	var wants tea.Cmd
	press := func(k string) {
		if wants != nil {
			clear(m.Pending)
		}
		wants = Update(m, Message(k))
	}
	for _, k := range keys {
		if want, is := strings.CutPrefix(k, "@"); is {
			at := rowWith(m, want)
			if at < 0 {
				run(m, wants)
				wants, at = nil, rowWith(m, want)
			}
			if at < 0 {
				return want
			}
			m.Put(at, "")
			continue
		}
		step, is := strings.CutPrefix(k, "to ")
		if !is {
			press(k)
		}
		for range m.Tables.Steps {
			if is && m.Step != desk.Kind(step) {
				press("right")
			}
		}
	}
	run(m, wants)
	return ""
}

// rowWith is where the first row stands whose text has these words; -1 where none has.
func rowWith(m *desk.Model, words string) int {
	return slices.IndexFunc(m.Page(m.ListWidth()).Rows, func(r desk.Row) bool { return strings.Contains(r.Line(), words) })
}

// OnRow puts the cursor on the first row whose text holds words.
func OnRow(t testing.TB, m *desk.Model, words string) desk.Row {
	t.Helper()
	i := rowWith(m, words)
	if i < 0 {
		t.Fatalf("no row with %q on %s:\n%s", words, m.Top(), View(m))
	}
	r := m.Page(m.ListWidth()).Rows[i]
	m.Put(i, r.Key)
	return r
}

// To goes by the arrows to the first row whose text holds words.
func To(t testing.TB, m *desk.Model, words string) {
	t.Helper()
	want := rowWith(m, words)
	if want < 0 {
		t.Fatalf("no row with %q on %s:\n%s", words, m.Top(), View(m))
	}
	for {
		switch at := m.At(m.Page(m.ListWidth())); {
		case at < want:
			Press(m, "down")
		case at > want:
			Press(m, "up")
		default:
			return
		}
	}
}

// EveryScreen is every screen, by the keys that open it from the first step.
var EveryScreen = map[string][]string{
	"wires": nil, "layers": {"to layers"}, "fill": {"to fill"}, "sheath": {"to sheath"},
	"build": {"to build"}, "wire": {"enter"}, "layer": {"to layers", "down", "enter"},
	"what if": {"to layers", "1", "enter"}, "variants": {"to layers", "@as it is", "+", "@as it was", "enter"},
	"one more": {"to layers", "@one more wire", "enter"},
	"branches": {"esc"}, "menu": {"esc", "esc"}, "help": {"h"}, "quit": {"+", "q"}, "field": {"5"},
	"size": {"enter", "down", "down", "enter"}, "to": {"enter", "down", "down", "down", "down", "down", "down", "down", "enter"},
	"worst first": {"@nearest its limit", "enter"}, "sizes": {"@sizes that satisfy", "enter"}, "feeds": {"@protection", "enter"},
	"feed": {"@protection", "enter", "enter"},
	"duty": {"enter", "@duty", "enter"}, "feed to choose": {"enter", "@feed  ", "enter"}, "data wire": {"@Crank speed +", "enter"},
	"ends": {"esc", "@terminations", "enter"}, "end": {"esc", "@terminations", "enter", "enter"}, "splices": {"esc", "@splices", "enter"},
	"splice":          {"esc", "@splices", "enter", "enter"},
	"which connector": {"esc", "@terminations", "enter", "enter", "@connector  ", "enter"},
	"arrangement":     {"esc", "@terminations", "enter", "enter", "@connector  ", "enter", "@any other", "enter", "3", "7", "enter"},
	"lists":           {"esc", "@lists", "enter"},
	"change":          {"esc", "-"}, "split": {"esc", "-", "@split", "enter"},
	"hangs": {"esc", "-", "@to  ", "enter"}, "name": {"esc", "-", "@name", "enter"}, "id": {"esc", "-", "@rename", "enter"},
	"breakout": {"esc", "down", "enter"}, "margins": {"to sheath", "@heat margin", "enter"},
	"threading": {"to sheath", "@thread on", "enter"},
	"boot":      {"to sheath", "@boot P1", "enter"}, "add cover": {"to sheath", "@add  ", "enter"},
	"cover":     {"to sheath", "@add  ", "enter", "down", "down", "enter"},
	"run":       {"to build", "@bench run", "enter", "5", "enter"},
	"run layer": {"to build", "@bench run", "enter", "5", "enter", "@all steps", "enter", "@T1 layer 1", "enter"},
	"run wire":  {"to build", "@bench run", "enter", "5", "enter", "4", "enter"},
	"run test":  {"to build", "@bench run", "enter", "5", "enter", "@all steps", "enter", "@ring out bare", "enter", "9", "enter"},
	"who works": {"to build", "@bench run", "enter"}, "steps": {"to build", "@bench run", "enter", "5", "enter", "@all steps", "enter"},
	"run change": {"to build", "@bench run", "enter", "5", "enter", "4", "enter", "enter", "esc",
		"@revision", "+", "@bench run", "enter"},
	"run difference": {"to build", "@bench run", "enter", "5", "enter", "4", "enter", "enter", "esc",
		"@revision", "+", "@bench run", "enter", "enter"},
	"add": {"esc", "+"}, "kinds of device": {"esc", "+", "enter"}, "kind of device": {"esc", "+", "enter", "enter"},
	"new devices": {"esc", "+", "enter", "enter", "enter"}, "new spares": {"esc", "+", "@spare wires", "enter"},
	"new connector": {"esc", "+", "@a connector", "enter", "enter"},
	"several wires": {"@change several", "enter"}, "marked wires": {"@change several", "enter", "+", "right"},
	"unit of the marked":   {"@change several", "enter", "enter", "down", "enter", "right", "@make a pair", "enter", "down", "+"},
	"splice of the marked": {"@change several", "enter", "enter", "down", "enter", "right", "@join", "enter"},
	"several of an end":    {"esc", "@terminations", "enter", "enter", "@change several", "enter"},
	"wires from here":      {"esc", "@terminations", "enter", "enter", "@ free", "enter"},
	"why":                  {"w"}, "figures": {"to layers", "end", "enter"}, "unsaved work": nil, "file changed": {"+", "s"},
	"still needed": {"esc", "@more things", "enter"}, "a branch to": {"esc", "@No branch leads to NEW1", "enter"},
	"rules":           {"esc", "@rules of this shop", "enter"},
	"drawing":         {"esc", "@drawing of the board", "enter"},
	"whole file":      {"esc", "@everything in the file", "enter"},
	"values":          {"esc", "@terminations", "enter", "enter", "@all its values", "enter"},
	"records":         {"esc", "@everything in the file", "enter", "@wires  ", "enter"},
	"wire list":       {"esc", "esc", "@import a wire", "enter", "x", ".", "c", "s", "v", "enter"},
	"table of a list": {"esc", "esc", "@import a wire", "enter", "x", ".", "c", "s", "v", "enter", "@ table ", "enter"},
	"meanings of a column": {"esc", "esc", "@import a wire", "enter", "x", ".", "c", "s", "v", "enter", "@ table ", "enter",
		"@column Remark", "enter"},
	"list of values": {"esc", "@terminations", "enter", "enter", "@all its values", "enter", "@reserved", "enter"},
}

// EveryKey is every key that means something, and some that mean nothing.
var EveryKey = []string{"up", "down", "left", "right", "enter", "esc", "backspace", "delete", "tab", "ctrl+c", "ctrl+z",
	"pgdown", "end", "home", "0", "5", "9", "+", "-", "*", "/", ".", " ", "a", "b", "h", "m", "q", "r", "s", "u", "w", "x", "z", "Z", "?"}
