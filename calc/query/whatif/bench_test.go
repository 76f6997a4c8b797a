package whatif_test

import (
	"os"
	"path/filepath"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/calc/query/whatif"
	"contralay/calc/sheet"
	"contralay/model/file"
)

// demonstration is the sheet of the demonstration and its trunk.
func demonstration(t testing.TB) (*sheet.Sheet, int) {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "..", "..", "cmd", "contralay", "demo.toml"))
	if err != nil {
		t.Fatal(err)
	}
	d, err := file.Parse(text, "demo.toml")
	if err != nil {
		t.Fatal(err)
	}
	s := calc.Complete(&d.Harness, calctest.Catalogue(t), nil)
	return s, s.Index.Branch["T1"]
}

// BenchmarkValue is one value of each kind and what it costs.
func BenchmarkValue(b *testing.B) {
	s, i := demonstration(b)
	for _, k := range whatif.Kinds(s, i) {
		for _, v := range k.Values {
			b.Run(v.Key, func(b *testing.B) {
				for range b.N {
					whatif.Built(s, i, v)
				}
			})
		}
	}
}
