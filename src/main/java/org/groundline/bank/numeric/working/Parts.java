package org.groundline.bank.numeric.working;

import org.groundline.bank.numeric.draw.Draw;
import org.groundline.bank.numeric.draw.DrawSpace;
import org.groundline.bank.numeric.formula.NoAnswer;
import org.groundline.bank.numeric.goal.Goal;
import org.groundline.bank.numeric.picture.Picture;
import org.groundline.bank.numeric.posed.PosedPicture;
import org.groundline.bank.numeric.source.Wording;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/// A template's parts, each read and sound in itself.
///
/// @param told the drawn values that the stem or the drawing beside it tells: all but those that
///   only feed other draws
public record Parts(
        String id,
        Wording stem,
        Wording explain,
        DrawSpace space,
        Working working,
        Optional<Picture> picture,
        Set<String> told) {
    /// The parts, with what the stem and the drawing beside it tell.
    public static Parts of(
            String id,
            Wording stem,
            Wording explain,
            DrawSpace space,
            Working working,
            Optional<Picture> picture) {
        Set<String> told = new HashSet<>(stem.names());
        picture.ifPresent(p -> told.addAll(p.toldInStem()));
        return new Parts(id, stem, explain, space, working, picture, Set.copyOf(told));
    }

    /// What the answer is for.
    public Goal goal() {
        return working.goal();
    }

    /// Whether a student is told the value of this draw.
    public boolean tells(Draw draw) {
        return told.contains(draw.name());
    }

    /// The drawn values as printed, by name.
    Map<String, String> printed(int[] choice, Instance instance) {
        var printed = new LinkedHashMap<String, String>();
        for (int i = 0; i < choice.length; i++) {
            var draw = space.draws().get(i);
            printed.put(draw.name(), draw.printed(choice[i], instance.value(i)));
        }
        return printed;
    }

    /// What was chosen by chance, as printed, by name; all other values follow from it.
    public Map<String, String> chosen(int[] choice) {
        var printed = new LinkedHashMap<String, String>();
        for (int i = 0; i < choice.length; i++) {
            if (space.draws().get(i) instanceof Draw.Chosen draw) {
                printed.put(draw.name(), draw.values().get(choice[i]).printed());
            }
        }
        return printed;
    }

    /// Told values that need not be among those of the draws, as they would be printed.
    public Map<String, String> printed(Instance instance) {
        var printed = new LinkedHashMap<String, String>();
        for (int i = 0; i < space.draws().size(); i++) {
            var draw = space.draws().get(i);
            if (tells(draw)) {
                printed.put(draw.name(), draw.printed(instance.value(i)));
            }
        }
        return printed;
    }

    /// The worked solution, line by line.
    public List<String> solution(Instance instance) {
        var lines = new ArrayList<String>();
        for (int i = 0; i < working.steps().size(); i++) {
            lines.add(working.steps().get(i).line(instance.value(working.drawn() + i)));
        }
        lines.add(goal().line(instance.answer()));
        return List.copyOf(lines);
    }

    /// @param texts how all values are printed, see [#texts]
    Optional<PosedPicture> posedPicture(Instance instance, Map<String, String> texts) {
        return picture.map(p -> p.posed(instance.drawing(), texts));
    }

    /// Computes everything for drawn values (SI).
    ///
    /// @throws NoAnswer if a formula has no finite value for them, or the drawing refuses them
    public Instance solve(double[] drawnValues) {
        Instance instance = working.solve(drawnValues);
        return picture.map(p -> instance.withDrawing(p.valuesOf(allValues(instance))))
                .orElse(instance);
    }

    /// The drawn values, the steps and the answer, in SI.
    private double[] allValues(Instance instance) {
        int known = working.drawn() + working.steps().size();
        double[] values = new double[known + 1];
        for (int i = 0; i < known; i++) {
            values[i] = instance.value(i);
        }
        values[known] = goal().unit().toSi(instance.answer());
        return values;
    }

    /// How the drawn values, the steps and the answer are printed, by name.
    Map<String, String> texts(Map<String, String> printed, Instance instance) {
        var values = new LinkedHashMap<>(printed);
        for (int i = 0; i < working.steps().size(); i++) {
            var step = working.steps().get(i);
            values.put(step.name(), step.printed(instance.value(working.drawn() + i)));
        }
        values.put(Wording.ANSWER, goal().unit().print(goal().printed(instance.answer())));
        return values;
    }
}
