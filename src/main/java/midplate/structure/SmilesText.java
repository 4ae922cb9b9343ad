package midplate.structure;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;

/** A SMILES as signs in a row: finds slips of the pen before any chemistry is done, each with its place. */
final class SmilesText {
    private static final String BONDS = "-=#$:/\\.";
    private static final String TO_ATOMS = "-=#$:/\\";
    private static final String LETTERS = "BCNOPSFIbcnops*";
    private static final int MOST_TRIES = 40;

    private final String smiles;

    SmilesText(String smiles) {
        this.smiles = smiles;
    }

    /**
     * A slip.
     *
     * @param key the text that tells it
     * @param at place of the sign, from 0
     * @param sign the sign there
     */
    record Slip(String key, int at, String sign) {}

    /** Where reading stopped, and why. */
    record Stop(int at, String reason) {}

    /** The first slip that can be seen. */
    Optional<Slip> slip() {
        Deque<Integer> branches = new ArrayDeque<>();
        Map<String, Integer> rings = new TreeMap<>();
        int at = 0;
        while (at < smiles.length()) {
            char sign = smiles.charAt(at);
            int next = at + 1;
            if (sign == '[') {
                int end = smiles.indexOf(']', at);
                if (end < 0) {
                    return slip("structure.open-bracket", at);
                }
                if (smiles.substring(at, end).indexOf('*') >= 0) {
                    return slip("structure.polymer", at);
                }
                next = end + 1;
            } else if (sign == '(') {
                branches.push(at);
            } else if (sign == ')') {
                if (branches.isEmpty()) {
                    return slip("structure.closed-branch", at);
                }
                branches.pop();
            } else if (sign == '%' || Character.isDigit(sign)) {
                next = ringEnd(at);
                if (next < 0) {
                    return slip("structure.bad-ring", at);
                }
                String ring = smiles.substring(at, next).replaceFirst("^%0*", "");
                if (rings.remove(ring) == null) {
                    rings.put(ring, at);
                }
            } else if (sign == '*' || !known(at)) {
                return unknown(at);
            } else if (TO_ATOMS.indexOf(sign) >= 0 && !joins(at)) {
                return slip("structure.open-bond", at);
            } else if (twoLetters(at)) {
                next = at + 2;
            }
            at = next;
        }
        if (!branches.isEmpty()) {
            return slip("structure.open-branch", branches.peekLast());
        }
        return rings.values().stream().min(Integer::compare).flatMap(open -> slip("structure.open-ring", open));
    }

    private int ringEnd(int at) {
        if (smiles.charAt(at) != '%') {
            return smiles.charAt(at) <= '9' ? at + 1 : -1;
        }
        return smiles.substring(at).matches("(?s)%[0-9][0-9].*") ? at + 3 : -1;
    }

    /** Whether a bond has an atom before it and an atom or a ring behind it. */
    private boolean joins(int at) {
        char next = at + 1 < smiles.length() ? smiles.charAt(at + 1) : ' ';
        boolean behind = LETTERS.indexOf(next) >= 0 || next == '[' || next == '%' || Character.isDigit(next);
        return at > 0 && smiles.charAt(at - 1) != '.' && behind;
    }

    private boolean twoLetters(int at) {
        return smiles.startsWith("Cl", at) || smiles.startsWith("Br", at);
    }

    private boolean known(int at) {
        char sign = smiles.charAt(at);
        return BONDS.indexOf(sign) >= 0 || LETTERS.indexOf(sign) >= 0;
    }

    private Optional<Slip> unknown(int at) {
        char sign = smiles.charAt(at);
        if (sign == '*') {
            return slip("structure.polymer", at);
        }
        if (sign == '>') {
            return slip("structure.reaction", at);
        }
        return slip(Character.isWhitespace(sign) ? "structure.blank" : "structure.bad-character", at);
    }

    private Optional<Slip> slip(String key, int at) {
        int length = Character.charCount(smiles.codePointAt(at));
        return Optional.of(new Slip(key, at, smiles.substring(at, at + length)));
    }

    /** The same with the hydrogen on one aromatic nitrogen that makes it readable: often n is written where [nH] is meant. */
    Optional<String> withHydrogen(Predicate<String> readable) {
        int tries = 0;
        boolean inBracket = false;
        for (int at = 0; at < smiles.length() && tries < MOST_TRIES; at++) {
            char sign = smiles.charAt(at);
            inBracket = sign == '[' || (inBracket && sign != ']');
            if (sign == 'n' && !inBracket) {
                tries++;
                String other = smiles.substring(0, at) + "[nH]" + smiles.substring(at + 1);
                if (readable.test(other)) {
                    return Optional.of(other);
                }
            }
        }
        return Optional.empty();
    }

    /** Where a reader stopped, as a slip. */
    Slip stopped(Function<String, Stop> reader) {
        Stop stop = reader.apply(smiles);
        int at = Math.max(0, Math.min(stop.at(), smiles.length() - 1));
        String key = stop.reason();
        return slip(key, at).orElseThrow();
    }
}
