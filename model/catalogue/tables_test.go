package catalogue

import (
	"bytes"
	"encoding/gob"
	"flag"
	"os"
	"path/filepath"
	"testing"

	"github.com/google/go-cmp/cmp"
)

var update = flag.Bool("update", false, "pack the tables anew")

// What is packed is what stands in the tables; packing the same tables gives the
// same bytes.
func TestPacked(t *testing.T) {
	tables, err := tablesOfData()
	if err != nil {
		t.Fatal(err)
	}
	var b bytes.Buffer
	if err := gob.NewEncoder(&b).Encode(packOf(tables)); err != nil {
		t.Fatal(err)
	}
	if *update {
		if err := os.WriteFile(filepath.Join("data", "packed.gob"), b.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	c, err := Default()
	if err != nil {
		t.Fatal(err)
	}
	if d := cmp.Diff(tables, c); d != "" {
		t.Fatalf("a table changed and was not packed: go test ./model/catalogue -update\n%.2000s", d)
	}
}
