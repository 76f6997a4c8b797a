package kit

import (
	"errors"
	"strings"

	"github.com/charmbracelet/bubbles/cursor"
	"github.com/charmbracelet/bubbles/key"
	"github.com/charmbracelet/bubbles/textinput"
	tea "github.com/charmbracelet/bubbletea"
	"github.com/charmbracelet/x/ansi"

	"contralay/model/unit"
	"contralay/model/visible"
	"contralay/ui/draw"
)

// FieldOf is what a field asks for.
type FieldOf struct {
	Label  string
	Unit   string // stands behind the value; never typed
	Value  string // what it is now
	Number bool   // digits, point or comma, minus, a fraction
	ID     bool   // an id, or what leads to one: it takes no joiners
	// Take takes the text; its error is said and the field stays open. It may be nil.
	Take func(text string) error
}

// Field is an open field: a draft of the value, taken with Enter. The text is edited
// by the library's textinput, with a cursor inside it, that does not blink, and without
// its clipboard (what the terminal pastes arrives as a paste).
//
// It shares its text with its copies, so it is used through a pointer.
type Field struct {
	FieldOf
	input  textinput.Model
	opened string // the draft of the value as it was
	fresh  bool   // nothing typed yet: the first letter replaces the draft
}

// FieldAnswer is what a key did to a field.
type FieldAnswer struct {
	Closed  bool   // the field is done with
	Taken   bool   // its text was taken; false where it was left as it was
	Says    string // what to tell, "" for nothing
	Refused bool   // the key was not accepted, and Says says why
}

// longestPaste bounds what a field takes at once.
const longestPaste = 200

// OpenField opens a field on its value, or on what was typed first.
func OpenField(f FieldOf, first string) *Field {
	in := textinput.New()
	in.Prompt = ""
	in.KeyMap = fieldKeys()
	in.Cursor.SetMode(cursor.CursorStatic)
	in.Focus() // its command would start the blinking, and is not run
	text, fresh := f.Value, true
	if first != "" {
		text, fresh = first, false
	}
	in.SetValue(clean(text))
	in.CursorEnd()
	return &Field{FieldOf: f, input: in, opened: clean(f.Value), fresh: fresh}
}

// fieldKeys are the library's keys less the clipboard and the suggestions, and less
// those that begin with Alt: the terminal writes Alt and Esc followed by a key alike,
// and here they are two keys.
func fieldKeys() textinput.KeyMap {
	k := textinput.DefaultKeyMap
	none := key.NewBinding(key.WithDisabled())
	k.Paste, k.AcceptSuggestion, k.NextSuggestion, k.PrevSuggestion = none, none, none, none
	k.WordForward = key.NewBinding(key.WithKeys("ctrl+right"))
	k.WordBackward = key.NewBinding(key.WithKeys("ctrl+left"))
	k.DeleteWordBackward = key.NewBinding(key.WithKeys("ctrl+w"))
	k.DeleteWordForward = none
	return k
}

// fieldMessages are the keys that move in a field or delete, as the library hears them.
var fieldMessages = map[string]tea.KeyType{
	"left": tea.KeyLeft, "right": tea.KeyRight, "home": tea.KeyHome, "end": tea.KeyEnd, "ctrl+left": tea.KeyCtrlLeft,
	"ctrl+right": tea.KeyCtrlRight, "backspace": tea.KeyBackspace, "delete": tea.KeyDelete, "ctrl+w": tea.KeyCtrlW,
	"ctrl+u": tea.KeyCtrlU, "ctrl+k": tea.KeyCtrlK, "ctrl+a": tea.KeyCtrlA, "ctrl+e": tea.KeyCtrlE,
}

// Draft is the text as it stands.
func (f *Field) Draft() string { return f.input.Value() }

// At is how many letters stand before the cursor.
func (f *Field) At() int { return f.input.Position() }

// Press gives one key to the field: its name, and the text it types. A paste may bring
// many letters at once.
func (f *Field) Press(name, text string, paste bool) FieldAnswer {
	if paste {
		return f.typed(clean(text), true)
	}
	kind, moves := fieldMessages[name]
	switch {
	case name == "esc":
		return FieldAnswer{Closed: true, Says: "left as it was"}
	case name == "enter":
		return f.enter()
	case name == "delete" && f.At() == len([]rune(f.Draft())):
		// Nothing stands behind the cursor: with gloves Delete is Backspace's neighbour.
		f.hear(tea.KeyBackspace)
	case moves:
		before, at := f.Draft(), f.At()
		if f.hear(kind); f.Draft() == before && f.At() == at {
			return FieldAnswer{Says: "nothing more that way; Enter takes the value, Esc leaves it as it was"}
		}
	case name == "up" || name == "down":
		return FieldAnswer{Says: "Enter takes the value, Esc keeps the old one"}
	case clean(text) == "":
		return FieldAnswer{Says: "that key does nothing in an open field"}
	default:
		return f.typed(clean(text), false)
	}
	return FieldAnswer{}
}

func (f *Field) hear(kind tea.KeyType) {
	f.fresh = false
	f.input, _ = f.input.Update(tea.KeyMsg{Type: kind})
}

func (f *Field) typed(text string, paste bool) FieldAnswer {
	if f.Number && !paste && !strings.ContainsAny(text, "0123456789.,/- ") {
		return FieldAnswer{Says: "type a number here: digits, . and /. Esc keeps the old one", Refused: true}
	}
	if f.fresh {
		f.input.SetValue("")
		f.fresh = false
	}
	f.input, _ = f.input.Update(tea.KeyMsg{Type: tea.KeyRunes, Runes: []rune(text), Paste: true})
	return FieldAnswer{}
}

// Ended is why a field did not take a text, where nothing is to be put behind it.
type Ended struct{ error }

// End makes an error one that nothing is put behind.
func End(err error) error { return Ended{err} }

func (f *Field) enter() FieldAnswer {
	text := strings.TrimSpace(visible.Typed(f.Draft(), f.ID))
	if f.Draft() == f.opened {
		text = f.Value // what the draft does not show of it stays
	}
	if f.Number && text != "" {
		if _, err := unit.ParseNumber(text); err != nil {
			return FieldAnswer{Says: text + " is not a number: use digits and one decimal point or comma", Refused: true}
		}
	}
	if f.Take != nil {
		switch err := f.Take(text); {
		case errors.As(err, new(Ended)):
			return FieldAnswer{Says: err.Error(), Refused: true}
		case err != nil:
			return FieldAnswer{Says: err.Error() + ". Backspace corrects it, Esc leaves it", Refused: true}
		}
	}
	return FieldAnswer{Closed: true, Taken: true}
}

// clean drops what would command a terminal and bounds what comes at once. Joiners stay until the
// text is taken: what they join may be typed after them.
func clean(s string) string {
	s = visible.Plain(s)
	if runes := []rune(s); len(runes) > longestPaste {
		return string(runes[:longestPaste])
	}
	return s
}

// Field draws an open field in one line of at most w cells: label: [draft] unit, and
// what the value was where there is room.
//
// It is drawn here and not by the library, which scrolls by one measure and draws by
// another where characters are wide, cannot spell in plain characters, and shows no
// cursor without colour. The cursor is a block; without colour it is a stroke before
// the letter that it stands on, and it takes a cell of its own everywhere, so that
// nothing moves with it.
func (t *Theme) Field(f *Field, w int) string {
	const leastDraft = 8
	label, unit, was := t.Text(f.Label)+": ", "", ""
	if f.Unit != "" {
		unit = " " + t.Text(f.Unit)
	}
	if f.Value != "" {
		was = "   was " + t.Text(f.Value)
	}
	room := w - draw.Width(label) - draw.Width(unit) - 2
	if room < leastDraft { // the draft is worth more than what it is called
		label = draw.Cut(label, max(w-draw.Width(unit)-2-leastDraft, 0), t.ASCII)
		room = w - draw.Width(label) - draw.Width(unit) - 2
	}
	if room < leastDraft {
		unit, room = "", w-draw.Width(label)-2
	}
	if room < 1 {
		return t.Fit("", w)
	}
	before, under, after := t.window(f, room)
	taken := draw.Width(before) + draw.Width(under) + draw.Width(after)
	if t.Palette.Depth() == draw.NoColour {
		taken++ // the stroke
	}
	line := t.Paint(Strong, label) + "[" + t.draft(before, under, after) + "]" + t.Paint(Quiet, unit)
	if used := draw.Width(label) + taken + 2 + draw.Width(unit); used+draw.Width(was) <= w {
		line += t.Paint(Quiet, was)
	}
	return draw.Cut(line, w, t.ASCII)
}

func (t *Theme) draft(before, under, after string) string {
	if t.Palette.Depth() == draw.NoColour {
		stroke := "▏"
		if t.ASCII {
			stroke = "|"
		}
		if strings.TrimSpace(under) == "" && after == "" {
			stroke = "_" // at the end, where the typing goes on
		}
		return before + stroke + strings.TrimSuffix(under, " ") + after
	}
	return t.Paint(FieldText, before) + t.Paint(Cursor, under) + t.Paint(FieldText, after)
}

// window is the part of the draft round the cursor that has room: what stands before
// it, the character under it (a blank at the end), what stands after. Where something
// is left out the side says so.
func (t *Theme) window(f *Field, room int) (before, under, after string) {
	all := []rune(f.Draft())
	at := min(f.At(), len(all))
	left := clusters(t.Text(string(all[:at])))
	right := clusters(t.Text(string(all[at:])))
	under = " "
	if len(right) > 0 {
		under, right = right[0], right[1:]
	}
	room -= draw.Width(under)
	if t.Palette.Depth() == draw.NoColour {
		room-- // the stroke
	}
	more := "…"
	if t.ASCII {
		more = "~"
	}
	// What was typed last is read first: three quarters of the room stand before the cursor.
	take := func(from []string, room int, last bool) (string, int) {
		n, cells := 0, 0
		for n < len(from) {
			c := from[n]
			if last {
				c = from[len(from)-1-n]
			}
			if cells+draw.Width(c) > room {
				break
			}
			cells += draw.Width(c)
			n++
		}
		part := from[:n]
		if last {
			part = from[len(from)-n:]
		}
		return strings.Join(part, ""), n
	}
	room = max(room, 0)
	rest := draw.Width(strings.Join(right, ""))
	give := min(rest, max(room/4, room-draw.Width(strings.Join(left, ""))))
	before, n := take(left, room-give, true)
	if n < len(left) && room-give > 0 {
		before, _ = take(left, room-give-1, true)
		before = more + before
	}
	after, n = take(right, room-draw.Width(before), false)
	if free := room - draw.Width(before); n < len(right) && free > 0 {
		after, _ = take(right, free-1, false)
		after += more
	}
	return before, under, after
}

// clusters parts a text into what is read as one character each.
func clusters(s string) []string {
	var out []string
	for s != "" {
		c, _ := ansi.FirstGraphemeCluster(s, ansi.GraphemeWidth)
		if c == "" {
			break
		}
		out, s = append(out, c), s[len(c):]
	}
	return out
}
