package file_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"contralay/model"
	"contralay/model/file"
	"contralay/model/file/schema"
	"contralay/model/unit"
)

// The schema, asked before a file is saved, says yes of every harness that can be read back and of no other; of a text that is no
// UTF-8 it may say no.
func TestSoundIsWhatCanBeReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		h := harness(t)
		if !schema.Sound(&h) {
			t.Fatal("a harness that can be read back is refused")
		}
		sure := breakOne(t, &h)
		_, err := file.Parse(file.Encode(file.Document{Harness: h}), "loom.toml")
		if got := schema.Sound(&h); got != (err == nil) && (got || sure) {
			t.Fatalf("sound: %v, read back: %v", got, err)
		}
	})
}

// breakOne puts something into a harness that most often cannot be read back; sure is false where its text is no UTF-8.
func breakOne(t *rapid.T, h *model.Harness) (sure bool) {
	bad := rapid.SampledFrom([]string{"a\nb", "\x1b[2J", "\u202e", "a\u200db", "a\x80", "\xff", "", "plain"}).Draw(t, "bad")
	number := rapid.SampledFrom([]float64{math.NaN(), math.Inf(1), -1, 2e9, 0, -300, 3}).Draw(t, "number")
	sure = bad != "a\x80" && bad != "\xff"
	term := &h.Terminations[0]
	switch rapid.IntRange(0, 12).Draw(t, "place") {
	case 0:
		h.Head.Name = model.Some(bad)
	case 1:
		h.Head.Note = model.Some(bad)
	case 2:
		term.ID = bad
	case 3:
		term.Cavities = []string{"1", bad}
	case 4:
		term.Contacts = map[string][]string{"20": {bad}}
	case 5:
		term.Contacts = map[string][]string{bad: {"1"}}
	case 6:
		term.Clock = model.Some(int(min(max(number, -5), 50)))
	case 7:
		term.SealMM = []unit.Millimetre{unit.Millimetre(number), 2}
	case 8:
		term.Mount = model.Some(model.Mount(bad))
	case 9:
		h.Rules.AmbientC = model.Some(unit.Celsius(number))
	case 10:
		h.Rules.FillerStock = []unit.Millimetre{1, unit.Millimetre(number)}
	case 11:
		term.SealMM = []unit.Millimetre{1, 2, 3}
	default: // twice one id, once the text is written
		for _, id := range []string{"X" + bad, "X\xfe", "X\uFFFD"} {
			h.Terminations = append(h.Terminations, model.Termination{ID: id})
		}
		return false
	}
	return sure
}
