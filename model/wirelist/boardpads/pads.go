package boardpads

import (
	"slices"
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/pads"
	"contralay/model/wirelist/table"
)

// isBoardPad reports whether a cell is a pad as only boards have them: one of a supply or a bus, a number behind the word for such pads,
// a number with what it does in brackets.
//
//	GND   3.3V   GPIO21   GP4   SDA   0 (RX1)
func isBoardPad(text string) bool {
	front, in, ok := strings.Cut(text, "(")
	front = table.Fold(strings.TrimSpace(front))
	in = strings.TrimSpace(strings.TrimSuffix(in, ")"))
	if isBusPad(front) || ok && isBusPad(in) {
		return true
	}
	for _, lead := range []string{"gpio", "gp", "io"} {
		if n, is := strings.CutPrefix(front, lead); is && isNumber(strings.TrimLeft(n, " _")) {
			return true
		}
	}
	return false
}

func isNumber(s string) bool { return s != "" && len(s) < 4 && strings.Trim(s, "0123456789") == "" }

// isBusPad reports whether a word is a pad of a bus or a supply, with a number behind it or not. Common practice, no source.
func isBusPad(word string) bool {
	f := table.Fold(word)
	bare := strings.TrimRight(f, "0123456789")
	return isSupply(f) || slices.Contains([]string{"sda", "scl", "rx", "tx", "rxd", "txd", "miso", "mosi", "sck", "sclk",
		"din", "dout", "trig", "echo"}, bare) || f == "cs" || f == "ss"
}

// isSupply reports whether a folded word is a pad of a supply; "com" is a contact as well.
func isSupply(folded string) bool { return pads.IsSupply(folded) && folded != "com" }

// isModulePad reports whether a word is what modules print beside a pad of theirs; most of these words are used of other things as well.
func isModulePad(word string) bool {
	f := table.Fold(word)
	bare := strings.TrimRight(f, "0123456789")
	return isBusPad(word) || slices.Contains([]string{"in", "out", "sig", "signal", "data", "dat", "clk", "en", "int", "rst", "dc",
		"ao", "do", "dq", "ain", "aout", "vm", "v+", "v-", "pwm", "dir", "step"}, bare)
}

// padBehind parts the last word off a text that is the pad of a module; pad is "" where it is none.
func padBehind(text string) (of, pad string) {
	at := strings.LastIndexByte(text, ' ')
	if at < 1 || strings.ContainsAny(text, ":()=/") || isRemark(text) {
		return "", ""
	}
	of, pad = strings.TrimSpace(text[:at]), text[at+1:]
	if !isModulePad(pad) || len(name.Words(of)) == 0 || isModulePad(of) {
		return "", ""
	}
	return of, pad
}

// isRemark reports whether a piece of a cell is none that a module could be called, "100 nF to ground".
func isRemark(text string) bool {
	const most = 5 // words (no source)
	w := strings.Fields(text)
	return len(w) > most || strings.ContainsAny(text[:1], "0123456789") || slices.ContainsFunc(w, func(s string) bool {
		return slices.Contains([]string{"to", "via", "with", "through", "from", "on", "of", "for", "the", "not"}, table.Fold(s))
	})
}

// doesInBrackets parts a pad and what it does, which stands in brackets behind it: "GP0 (SDA)"; does is "" where nothing stands there.
func doesInBrackets(text string) (pad, does string) {
	pad, does, _ = strings.Cut(text, "(")
	pad, does = strings.TrimSpace(pad), strings.TrimSpace(strings.TrimSuffix(does, ")"))
	if pad == "" || !isBusPad(does) && !(isNumber(strings.TrimLeft(does, "AaDd"))) || strings.Contains(does, " ") {
		return text, ""
	}
	return pad, does
}

// pieces are the texts of a cell between the signs that part several ends.
func pieces(text string) (all []string) {
	parts := func(r rune) bool { return strings.ContainsRune(",;&", r) }
	for p := range strings.FieldsFuncSeq(strings.ReplaceAll(text, " and ", ","), parts) {
		if p = strings.TrimSpace(p); p != "" {
			all = append(all, p)
		}
	}
	return all
}

// otherPad parts the last word off a text that is short and in capitals, behind a module that has pads of its own in other cells.
//
//	Level shifter GND    Level shifter LV
func otherPad(text string, known map[string]map[string]bool) (of, pad string) {
	const most = 5 // letters (no source)
	at := strings.LastIndexByte(text, ' ')
	if at < 1 || len(text)-at-1 > most || strings.ToUpper(text[at:]) != text[at:] || !name.IsCavity(text[at+1:]) && len(text)-at-1 < 2 ||
		known[table.Fold(strings.TrimSpace(text[:at]))] == nil || strings.ContainsAny(text, ":()=/") || isNumber(text[at+1:]) {
		return "", ""
	}
	return strings.TrimSpace(text[:at]), text[at+1:]
}

// end is a module with its pad behind a colon, or a place without one, and what is said of it.
type end struct{ text, remark string }

// partPads are the ends of a cell; nil where none has a pad, or where some piece is no name. known are the pads of the modules of the
// table.
func partPads(text string, known map[string]map[string]bool) (all []end) {
	parted := 0
	for _, p := range pieces(text) {
		of, pad := padBehind(p)
		if pad == "" {
			of, pad = otherPad(p, known)
		}
		switch {
		case pad != "":
			all = append(all, end{text: of + ":" + pad})
			parted++
		case isRemark(p) && len(all) > 0:
			last := &all[len(all)-1]
			last.remark = strings.TrimPrefix(last.remark+", "+p, ", ")
		case isRemark(p) || len(strings.Fields(p)) > 3 || strings.ContainsAny(p, ":()=/"):
			return nil
		default:
			all = append(all, end{text: p})
		}
	}
	if parted == 0 {
		return nil
	}
	return all
}
