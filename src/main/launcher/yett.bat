@echo off
rem Starts Yett from wherever this folder stands; see the script yett beside this one. Two things it
rem cannot do: say that Java is being started, and see whether somebody sits at a terminal.
setlocal
rem As elsewhere, what lies in the current folder is not run in place of what is installed.
set "NoDefaultCurrentDirectoryInExePath=1"
rem Without the dots: the archive of classes is used only if its path is the one it was made for.
for %%I in ("%~dp0..") do set "HERE=%%~fI"

set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%HERE%\runtime\bin\java.exe" set "JAVA=%HERE%\runtime\bin\java.exe"
if "%JAVA%"=="java" (
  where /q $PATH:java
  if errorlevel 1 goto nojava
)

rem Long work pays for Java's second compiler, and only for what is asked very often, and for more memory; an interview does not.
set "OFTEN=-XX:Tier4InvocationThreshold=25000 -XX:Tier4MinInvocationThreshold=3000 -XX:Tier4CompileThreshold=75000 -XX:Tier4BackEdgeThreshold=200000 -XX:MetaspaceSize=128m -Xmn320m"
set "COMPILER=-XX:TieredStopAtLevel=1"
if "%~1"=="replay" set "COMPILER=%OFTEN%"
if "%~1"=="knowledge" for %%C in (anomalies compare cover review test) do if "%~2"=="%%C" set "COMPILER=%OFTEN%"

rem Java 17 makes one kind of archive and 24 another; each leaves the other's alone.
set "ARCHIVE="
if exist "%HERE%\yett.jsa" set ARCHIVE="-XX:SharedArchiveFile=%HERE%\yett.jsa"
if exist "%HERE%\yett.aot" set ARCHIVE="-XX:AOTCache=%HERE%\yett.aot"

"%JAVA%" "-Dorg.sqlite.lib.path=%HERE%\native" "-Dyett.native=%HERE%\native" -XX:+IgnoreUnrecognizedVMOptions ^
  -XX:+UseSerialGC -Xlog:disable %ARCHIVE% %COMPILER% -jar "%HERE%\yett.jar" %*
exit /b %ERRORLEVEL%

:nojava
echo Yett needs Java 17 or newer. Install it, or set JAVA_HOME to where it is. 1>&2
exit /b 69
