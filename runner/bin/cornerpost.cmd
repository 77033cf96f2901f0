@echo off
rem Starts Cornerpost on Windows. Builds it on first use; needs a JDK 17 or newer, and Maven for building.
setlocal
set "RUNNER=%~dp0.."
set "ROOT=%RUNNER%\.."
set "JAR=%RUNNER%\target\cornerpost.jar"
set "JAVA=java"
if defined JAVA_HOME set "JAVA=%JAVA_HOME%\bin\java"
if not exist "%JAR%" (
  echo cornerpost: building ^(first use^)... 1>&2
  call mvn -B -q -ntp -f "%ROOT%\pom.xml" -Dmaven.test.skip=true package 1>&2 || exit /b 3
)
"%JAVA%" -Djava.awt.headless=true -Dfile.encoding=UTF-8 -Dlog4j2.StatusLogger.level=OFF -Dorg.apache.logging.log4j.simplelog.level=OFF -XX:TieredStopAtLevel=1 -XX:C1MaxInlineSize=8 -XX:C1MaxInlineLevel=2 -XX:+UseSerialGC -Xms96m -Xmn32m -XX:-UsePerfData "-Dcornerpost.home=%ROOT%" -jar "%JAR%" %*
exit /b %ERRORLEVEL%
