@echo off
rem Builds Tapwright when needed, then runs it. Works from any folder.
setlocal
set "HOME_DIR=%~dp0"
set "JAR=%HOME_DIR%target\launcher\tapwright.jar"
set "STAMP=%HOME_DIR%target\built"
set "LOG=%HOME_DIR%target\build.log"
set "LOCK=%HOME_DIR%.building"

set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
"%JAVA%" -version >nul 2>&1
if errorlevel 1 (
    echo tapwright: no Java found; install a JDK 17 or newer and set JAVA_HOME to it 1>&2
    exit /b 4
)

call :is_stale
if errorlevel 1 call :build_alone
if errorlevel 1 exit /b 4

chcp 65001 >nul
if "%~1"=="" (
    "%JAVA%" -Xmx320m -Dtapwright.home="%HOME_DIR%." -cp "%JAR%" io.github.tapwright.desktop.Launch
    exit /b
)
"%JAVA%" -Xmx512m -XX:+UseSerialGC -Xshare:auto -Djava.awt.headless=true -Dtapwright.home="%HOME_DIR%." -jar "%JAR%" %*
exit /b %errorlevel%

rem The stamp dates from before a build that went through, so a build broken off counts as none.
:is_stale
if not exist "%JAR%" exit /b 1
if not exist "%STAMP%" exit /b 1
powershell -NoProfile -Command ^
    "$built = (Get-Item -LiteralPath $env:STAMP).LastWriteTime;" ^
    "$sources = @(Get-Item -LiteralPath ($env:HOME_DIR + 'pom.xml')) + @(Get-ChildItem -LiteralPath ($env:HOME_DIR + 'src\main'), ($env:HOME_DIR + 'validation') -Recurse);" ^
    "if ($sources | Where-Object { $_.LastWriteTime -gt $built }) { exit 1 } else { exit 0 }"
exit /b %errorlevel%

rem One launcher builds while others wait.
:build_alone
setlocal enabledelayedexpansion
set /a TRIES=0
:wait_for_lock
mkdir "%LOCK%" 2>nul && goto locked
if not exist "%LOCK%" (
    echo tapwright: cannot write to !HOME_DIR!; check its permissions 1>&2
    exit /b 4
)
set /a TRIES+=1
if %TRIES% geq 600 (
    echo tapwright: another build seems to run; if none does, remove the folder !LOCK! 1>&2
    exit /b 4
)
ping -n 2 127.0.0.1 >nul
goto wait_for_lock
:locked
set RESULT=0
call :is_stale
if errorlevel 1 call :build
if errorlevel 1 set RESULT=4
rmdir "%LOCK%"
exit /b %RESULT%

:build
setlocal enabledelayedexpansion
where mvn >nul 2>&1
if errorlevel 1 (
    echo tapwright: Maven, which builds Tapwright, was not found; install it and put it on the PATH 1>&2
    exit /b 4
)
echo Building Tapwright, because this is its first use or the sources have changed... 1>&2
if not exist "%HOME_DIR%target" mkdir "%HOME_DIR%target"
type nul > "%STAMP%.started"
pushd "%HOME_DIR%"
call mvn -q -B -Dunchecked=true -Dmaven.test.skip=true package > "%LOG%" 2>&1
set BUILT=%errorlevel%
popd
if not "%BUILT%"=="0" (
    type "!LOG!" 1>&2
    echo tapwright: the build failed, see above and !LOG!; it needs a JDK, and the network the first time 1>&2
    exit /b 4
)
move /y "%STAMP%.started" "%STAMP%" >nul
exit /b 0
