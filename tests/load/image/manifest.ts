import { readFileSync } from "node:fs";
import { parseAllDocuments } from "yaml";
import { deploymentFrom } from "../../../api/config/deployment.ts";
import type { Bound } from "../table.ts";

interface Probe {
	readonly httpGet: { readonly path: string; readonly port: string };
}

interface Container {
	readonly env: readonly { readonly name: string; readonly value: string }[];
	readonly ports: readonly { readonly name: string; readonly containerPort: number }[];
	readonly startupProbe: Probe;
	readonly livenessProbe: Probe;
	readonly readinessProbe: Probe;
	readonly lifecycle: { readonly preStop: { readonly exec: { readonly command: readonly string[] } } };
}

interface Deployment {
	readonly spec: {
		readonly strategy: { readonly rollingUpdate: { readonly maxUnavailable: number } };
		readonly template: {
			readonly spec: {
				readonly terminationGracePeriodSeconds: number;
				readonly containers: readonly [Container];
			};
		};
	};
}

/** What the example for an orchestrator says, and whether it agrees with itself and with the service. */
export function manifest(file: URL) {
	const documents = parseAllDocuments(readFileSync(file, "utf8"));
	const errors = documents.flatMap((document) => [...document.errors, ...document.warnings]);
	if (errors.length > 0) throw new Error(errors.map(({ message }) => message).join("\n"));
	const { spec } = documents[0]!.toJS() as Deployment;
	const pod = spec.template.spec;
	const [container] = pod.containers;
	const environment = Object.fromEntries(container.env.map(({ name, value }) => [name, value]));
	const { port, metricsPort, settings } = deploymentFrom(environment); // throws where the service would not start
	const ports = Object.fromEntries(container.ports.map(({ name, containerPort }) => [name, containerPort]));
	const probes = [container.startupProbe, container.livenessProbe, container.readinessProbe];
	const sleep = Number(container.lifecycle.preStop.exec.command[1]);
	const times = [settings.computingTime, settings.grace, pod.terminationGracePeriodSeconds - sleep];
	const bounds: Bound[] = [
		{
			name: "kubernetes.yaml: the ports are those that the service is told to listen on",
			holds: ports.http === port && ports.metrics === metricsPort,
			found: JSON.stringify(ports),
		},
		{
			name: "kubernetes.yaml: time to compute < time to finish < time before it is killed",
			holds: times[0]! < times[1]! && times[1]! < times[2]!,
			found: times.map((time) => `${time} s`).join(" < "),
		},
		{
			name: "kubernetes.yaml: a rolling update takes none away before its time",
			holds: spec.strategy.rollingUpdate.maxUnavailable === 0,
			found: `maxUnavailable ${spec.strategy.rollingUpdate.maxUnavailable}, ${documents.length} documents parse`,
		},
	];
	return { environment, probes: probes.map(({ httpGet }) => httpGet.path), bounds };
}
