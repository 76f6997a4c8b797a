// Package wires is the screens of wires, their duty and their feeds.
package wires
