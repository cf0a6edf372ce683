package org.groundline.bank.numeric.formula;

import com.ezylang.evalex.Expression;
import com.ezylang.evalex.config.FunctionDictionaryIfc;
import com.ezylang.evalex.data.EvaluationValue;
import com.ezylang.evalex.functions.FunctionIfc;
import com.ezylang.evalex.functions.FunctionParameterDefinition;
import com.ezylang.evalex.parser.Token;

import java.util.List;

/// Tells the parser that every name may be a function of any number of values. Which ones there
/// really are is decided when its tree is walked, where a better message can be given; the parser
/// never computes anything.
final class AnyFunction implements FunctionIfc, FunctionDictionaryIfc {
    private static final FunctionParameterDefinition VALUES =
            FunctionParameterDefinition.builder().name("values").isVarArg(true).build();

    @Override
    public FunctionIfc getFunction(String name) {
        return this;
    }

    @Override
    public boolean hasFunction(String name) {
        return true;
    }

    @Override
    public List<FunctionParameterDefinition> getFunctionParameterDefinitions() {
        return List.of(VALUES);
    }

    @Override
    public boolean hasVarArgs() {
        return true;
    }

    @Override
    public void addFunction(String name, FunctionIfc function) {
        throw new UnsupportedOperationException("every function is there already");
    }

    @Override
    public void validatePreEvaluation(Token token, EvaluationValue... values) {
        throw new UnsupportedOperationException("the parser does not compute");
    }

    @Override
    public EvaluationValue evaluate(Expression formula, Token token, EvaluationValue... values) {
        throw new UnsupportedOperationException("the parser does not compute");
    }
}
