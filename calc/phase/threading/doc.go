// Package threading is the phase of the order in which everything is threaded on.
package threading
