@echo off
rem Starts Yett from wherever this folder stands; see the script yett beside this one.
setlocal
set "HERE=%~dp0.."
set "JAVA=java"
if defined JAVA_HOME if exist "%JAVA_HOME%\bin\java.exe" set "JAVA=%JAVA_HOME%\bin\java.exe"
if exist "%HERE%\runtime\bin\java.exe" set "JAVA=%HERE%\runtime\bin\java.exe"

set "COMPILER=-XX:TieredStopAtLevel=1"
if /i "%~1"=="replay" set "COMPILER="
if /i "%~1"=="knowledge" for %%C in (anomalies compare cover review test) do if /i "%~2"=="%%C" set "COMPILER="

set "ARCHIVE=-XX:+UseSerialGC"
if exist "%HERE%\yett.jsa" set "ARCHIVE=-XX:SharedArchiveFile=%HERE%\yett.jsa"
if exist "%HERE%\yett.aot" set "ARCHIVE=-XX:AOTCache=%HERE%\yett.aot"

"%JAVA%" -XX:+IgnoreUnrecognizedVMOptions %COMPILER% -XX:+UseSerialGC "%ARCHIVE%" ^
  -Xlog:disable "-Dorg.sqlite.lib.path=%HERE%\native" -jar "%HERE%\yett.jar" %*
exit /b %ERRORLEVEL%
