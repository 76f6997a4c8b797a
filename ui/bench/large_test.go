package bench_test

import (
	"path/filepath"
	"testing"
	"time"

	tea "github.com/charmbracelet/bubbletea"

	"contralay/model/file"
	"contralay/ui/bench"
	"contralay/ui/bench/desk"
	"contralay/ui/draw"
)

// BenchmarkLarge is what a key that changes a wire of testdata/whole.toml takes without
// the terminal: the edit with its journal, and the frame.
func BenchmarkLarge(b *testing.B) {
	d, err := file.Load(filepath.Join("..", "..", "testdata", "whole.toml"))
	if err != nil {
		b.Fatal(err)
	}
	cat := entries(b)
	j, err := file.OpenJournal(b.TempDir(), "")
	if err != nil {
		b.Fatal(err)
	}
	defer j.Close()
	keep := func(d file.Document, dirty bool) error {
		if dirty {
			return j.Keep(d, time.Unix(0, 0))
		}
		j.Clear()
		return nil
	}
	m := ready(bench.New(desk.Config{Doc: d, Path: "x", Cat: cat, Palette: draw.Palette{Colour: true, Dark: true}, Keep: keep}))
	bench.Update(m, tea.WindowSizeMsg{Width: 80, Height: 24})
	bench.Update(m, message("enter"))
	bench.Update(m, message("down"))
	keys := []string{"+", "-"}
	n := 0
	b.Run("update", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			bench.Update(m, message(keys[n%2]))
			n++
		}
	})
	b.Run("view", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			_ = bench.View(m)
		}
	})
	b.Run("both", func(b *testing.B) {
		b.ReportAllocs()
		for b.Loop() {
			bench.Update(m, message(keys[n%2]))
			_ = bench.View(m)
			n++
		}
	})
}
