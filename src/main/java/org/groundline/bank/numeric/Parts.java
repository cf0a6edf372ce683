package org.groundline.bank.numeric;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/// A template's parts, each read and sound in itself.
record Parts(String id, Wording stem, Wording explain, DrawSpace space, Working working, Key key) {
    /// The drawn values as printed, by name.
    Map<String, String> printed(int[] choice) {
        var printed = new LinkedHashMap<String, String>();
        for (int i = 0; i < choice.length; i++) {
            var draw = space.draws().get(i);
            printed.put(draw.name(), draw.values().get(choice[i]).printed());
        }
        return printed;
    }

    /// The worked solution, line by line.
    List<String> solution(Instance instance) {
        var lines = new ArrayList<String>();
        for (int i = 0; i < working.steps().size(); i++) {
            lines.add(working.steps().get(i).line(instance.value(working.drawn() + i)));
        }
        lines.add(key.line(instance.answer()));
        return List.copyOf(lines);
    }

    /// The explanation with the drawn values, the steps and the answer.
    String explanation(Map<String, String> printed, Instance instance) {
        var values = new LinkedHashMap<>(printed);
        for (int i = 0; i < working.steps().size(); i++) {
            var step = working.steps().get(i);
            values.put(step.name(), step.printed(instance.value(working.drawn() + i)));
        }
        values.put(Wording.ANSWER, key.unit().print(key.printed(instance.answer())));
        return explain.with(values);
    }
}
