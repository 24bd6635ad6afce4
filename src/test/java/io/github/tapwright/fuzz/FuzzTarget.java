package io.github.tapwright.fuzz;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.nio.file.Files;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;

/** One fuzz test, made ready as JUnit would: its folder, what it does before all, an instance. */
final class FuzzTarget {

    private final Object instance;
    private final Method method;

    private FuzzTarget(Object instance, Method method) {
        this.instance = instance;
        this.method = method;
    }

    static FuzzTarget of(String className, String methodName) throws ReflectiveOperationException, IOException {
        Class<?> test = Class.forName(className);
        for (Field field : test.getDeclaredFields()) {
            if (field.isAnnotationPresent(TempDir.class) && Modifier.isStatic(field.getModifiers())) {
                field.setAccessible(true);
                field.set(null, Files.createTempDirectory("fuzz"));
            }
        }
        for (Method before : test.getDeclaredMethods()) {
            if (before.isAnnotationPresent(BeforeAll.class)) {
                before.setAccessible(true);
                before.invoke(null);
            }
        }
        Constructor<?> constructor = test.getDeclaredConstructor();
        constructor.setAccessible(true);
        Method method = test.getDeclaredMethod(methodName, byte[].class);
        method.setAccessible(true);
        return new FuzzTarget(constructor.newInstance(), method);
    }

    void run(byte[] input) throws ReflectiveOperationException {
        try {
            method.invoke(instance, (Object) input);
        } catch (InvocationTargetException e) {
            throw new IllegalStateException("an input of " + input.length + " bytes", e.getCause());
        }
    }
}
