package file

import (
	"math/rand/v2"
	"path/filepath"
	"slices"
	"testing"

	"contralay/model"
)

// What is told of two harnesses is the same whether what they share is left out first or not.
func TestDifferencesOfWhatIsUnlike(t *testing.T) {
	a, err := Load(filepath.Join("..", "..", "testdata", "every-key.toml"))
	if err != nil {
		t.Fatal(err)
	}
	told := 0
	for seed := range uint64(60) {
		r := rand.New(rand.NewPCG(seed, 2))
		b := a
		h := &b.Harness
		for range 1 + r.IntN(4) {
			switch r.IntN(6) {
			case 0:
				h = h.EditWire(r.IntN(len(h.Wires)), func(w *model.Wire) { w.Size = "18" })
			case 1:
				h = h.EditBranch(r.IntN(len(h.Branches)), func(b *model.Branch) { b.LengthMM++ })
			case 2:
				h = h.EditTermination(r.IntN(len(h.Terminations)),
					func(t *model.Termination) { t.Reserved = append([]string{"9"}, t.Reserved...) })
			case 3:
				h = h.EditBuild("7", func(b *model.Build) { b.Note = model.Some("more") })
			case 4:
				h = h.SetReel("X", "20", 1.2)
			default:
				n, at := *h, r.IntN(len(h.Wires))
				n.Wires = slices.Delete(slices.Clone(h.Wires), at, at+1)
				h = &n
			}
		}
		b.Harness = *h
		for _, two := range [][2]Document{{a, b}, {b, a}, {a, a}} {
			got, want := Differences(two[0], two[1]), differences(two[0], two[1])
			told += len(got)
			if !slices.Equal(got, want) {
				t.Fatalf("seed %d: %q, want %q", seed, got, want)
			}
		}
	}
	if told < 100 {
		t.Errorf("only %d differences were told", told)
	}
}
