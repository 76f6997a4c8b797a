package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"
)

// percentiles reports p50, p95 and p99 in milliseconds.
func percentiles(b *testing.B, took []time.Duration) {
	slices.Sort(took)
	for _, p := range []int{50, 95, 99} {
		b.ReportMetric(float64(took[len(took)*p/100].Microseconds())/1000, fmt.Sprintf("p%d-ms", p))
	}
}

// BenchmarkKey is a key on the list of 130 wires to the first byte of the frame that
// shows it, through a pseudo-terminal.
func BenchmarkKey(b *testing.B) {
	s := start(b, 80, 24, nil, fileOf(b, "many.toml", manyWires()))
	s.laid()
	var took []time.Duration
	for n := 0; b.Loop(); n++ {
		before := len(s.sent())
		from := time.Now()
		s.press([]string{down, up}[n%2])
		for len(s.sent()) == before {
			<-s.drawn
		}
		took = append(took, time.Since(from))
		time.Sleep(2*quiet + time.Duration(n%7)*time.Millisecond) // out of step with the frames
	}
	percentiles(b, took)
}

// BenchmarkChange is a key that changes a wire of 130, with everything that hangs on
// it and the journal, to the frame that shows it.
func BenchmarkChange(b *testing.B) {
	s := start(b, 80, 24, nil, fileOf(b, "many.toml", manyWires()))
	s.laid()
	s.press(right)
	s.until("options", func(screen string) bool { return strings.Contains(screen, " A  ") })
	s.toRow(optionRow("A"))
	s.press(enter) // laid, so that nothing waits for a lay-up
	s.see("not saved")
	s.press(left)
	s.see("> WIRES <")
	var took []time.Duration
	for n := 0; b.Loop(); n++ {
		before := len(s.sent())
		from := time.Now()
		s.press([]string{"+", "-"}[n%2])
		for len(s.sent()) == before {
			<-s.drawn
		}
		took = append(took, time.Since(from))
		time.Sleep(4*quiet + time.Duration(n%7)*time.Millisecond)
	}
	percentiles(b, took)
}

// BenchmarkBurst is 200 keys in one write until the last of them is shown.
func BenchmarkBurst(b *testing.B) {
	s := start(b, 80, 24, nil, fileOf(b, "many.toml", manyWires()))
	s.laid()
	for b.Loop() {
		s.press(strings.Repeat(down, 100) + strings.Repeat(up, 100) + down)
		s.until("the row of the last key", func(screen string) bool { _, w := hand(screen); return strings.Contains(w, "w1 ") })
		s.press(up)
		s.until("the first row", func(screen string) bool { _, w := hand(screen); return strings.Contains(w, "w0 ") })
	}
}

// BenchmarkFirstFrame is from the start of the program to its first frame, on a
// terminal that answers nothing.
func BenchmarkFirstFrame(b *testing.B) {
	var took []time.Duration
	for b.Loop() {
		from := time.Now()
		s := start(b, 80, 24, nil, example)
		for !strings.Contains(s.sent(), "WIRES") {
			<-s.drawn
		}
		took = append(took, time.Since(from))
		s.close()
	}
	percentiles(b, took)
}

// BenchmarkIdle is the share of a processor that the bench takes while nobody presses
// a key, and the most memory it had after a tour of 130 wires and all their options.
func BenchmarkIdle(b *testing.B) {
	s := start(b, 120, 40, nil, fileOf(b, "many.toml", manyWires()))
	s.laid()
	for _, step := range steps[1:] {
		s.press(right)
		s.see(step)
	}
	for range 3 {
		s.changed(left)
	}
	s.until("two options", func(screen string) bool { return strings.Contains(screen, " B  ") })
	for range 12 {
		s.press(down)
		time.Sleep(quiet)
	}
	s.press("w")
	s.see("> WHY <")
	for b.Loop() {
		from := cpuTime(b, s.cmd.Process.Pid)
		const watch = 4 * time.Second
		time.Sleep(watch)
		b.ReportMetric(100*(cpuTime(b, s.cmd.Process.Pid)-from).Seconds()/watch.Seconds(), "cpu-%")
	}
	status, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", s.cmd.Process.Pid))
	if err != nil {
		b.Skip(err)
	}
	for _, l := range strings.Split(string(status), "\n") {
		if v, is := strings.CutPrefix(l, "VmHWM:"); is {
			kB, _ := strconv.Atoi(strings.Fields(v)[0])
			b.ReportMetric(float64(kB)/1024, "peak-MB")
		}
	}
}

// cpuTime is the processor time all threads of a process have run, as the scheduler
// counts it in nanoseconds: Documentation/scheduler/sched-stats of the Linux kernel.
func cpuTime(b *testing.B, pid int) time.Duration {
	files, _ := filepath.Glob(fmt.Sprintf("/proc/%d/task/*/schedstat", pid))
	if len(files) == 0 {
		b.Skip("no schedstat here")
	}
	total := time.Duration(0)
	for _, f := range files {
		if text, err := os.ReadFile(f); err == nil {
			ns, _ := strconv.Atoi(strings.Fields(string(text))[0])
			total += time.Duration(ns)
		}
	}
	return total
}
